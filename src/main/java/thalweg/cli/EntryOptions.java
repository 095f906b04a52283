package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import thalweg.fault.InputException;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.Entry;
import thalweg.logbook.Photo;
import thalweg.logbook.Round;
import thalweg.logbook.Work;
import thalweg.service.ReadPhotos;

/** What can be said about an inspection; empty where the option was not given. */
final class EntryOptions {

    private static final String NONE = "none";

    @Option(
            names = "--left",
            paramLabel = "CONDITION",
            description = "as left, where work changed it; as-found where none did")
    private @Nullable String left;

    @Option(
            names = "--work",
            paramLabel = "WORK",
            split = ",",
            description = "added, replaced, removed, cleaned, tightened, commas between; or none")
    private @Nullable List<String> work;

    @Option(names = "--round", paramLabel = "ID", description = "the round it belongs to: an id, latest, or none")
    private @Nullable String round;

    @Option(
            names = "--photo",
            paramLabel = "FILE[=CAPTION]",
            description = "a photo that shows it, as often as needed; its name, caption and hash are kept")
    private List<String> photos = new ArrayList<>();

    @Mixin
    private VisitOptions visit = new VisitOptions();

    /** What can be said about any visit. */
    VisitOptions visit() {
        return visit;
    }

    /** A condition; empty where the part was not seen. */
    static Optional<Condition> condition(String word) {
        String plain = VisitOptions.plain(word);
        if (plain.equals("not-seen")) {
            return Optional.empty();
        }
        return Optional.of(VisitOptions.oneOf(
                plain,
                Condition.class,
                "The condition \"" + word
                        + "\" is not known; it is one of sound, worn, doubtful, unsafe, gone, or not-seen."));
    }

    /** The condition as left; the inner value is empty where that is as found. */
    // Two answers in one on purpose: whether something was said, and whether that was a condition.
    @SuppressWarnings("OptionalMapToOptional")
    Optional<Optional<Condition>> left() {
        if (left == null || VisitOptions.plain(left).equals("as-found")) {
            return Optional.ofNullable(left).map(word -> Optional.empty());
        }
        return Optional.of(Optional.of(VisitOptions.oneOf(
                VisitOptions.plain(left),
                Condition.class,
                "The condition as left \"" + left + "\" is not known; it is one of "
                        + VisitOptions.known(Condition.class) + ", or as-found.")));
    }

    /** The work done; an empty list where it is said that there was none. */
    Optional<List<Work>> work() {
        return Optional.ofNullable(work)
                .map(words -> words.equals(List.of(NONE))
                        ? List.of()
                        : words.stream()
                                .map(word -> VisitOptions.oneOf(
                                        VisitOptions.plain(word),
                                        Work.class,
                                        "The work \"" + word + "\" is not known; it is one of "
                                                + VisitOptions.known(Work.class) + ", or none."))
                                .toList());
    }

    /**
     * The round; the inner value is empty where it is said that it belongs to none.
     *
     * @param canyon in which it is looked for
     */
    // Two answers in one on purpose: whether something was said, and whether that was a round.
    @SuppressWarnings("OptionalMapToOptional")
    Optional<Optional<Entry<Round>>> round(CanyonRecord canyon) {
        return Optional.ofNullable(round)
                .map(name -> name.equals(NONE) ? Optional.empty() : Optional.of(round(canyon, name)));
    }

    private static Entry<Round> round(CanyonRecord canyon, String name) {
        List<Entry<Round>> rounds = canyon.countingRounds();
        return rounds.stream()
                .filter(one -> name.equals("latest")
                        || one.uid().text().equals(name.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        rounds.isEmpty()
                                ? "There is no round in " + canyon.canyon().name() + "; `round CANYON` enters one."
                                : "There is no round \"" + name + "\" in "
                                        + canyon.canyon().name()
                                        + "; `show --ids CANYON` lists its rounds, and latest is the newest."));
    }

    /** The photos, each read for its hash. */
    List<Photo> photos() {
        return ReadPhotos.of(photos);
    }

    /** The first option that was given and that only an inspection has. */
    Optional<String> ofInspections() {
        if (left != null) {
            return Optional.of("--left");
        }
        if (work != null) {
            return Optional.of("--work");
        }
        if (round != null) {
            return Optional.of("--round");
        }
        return photos.isEmpty() ? Optional.empty() : Optional.of("--photo");
    }
}
