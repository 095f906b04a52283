package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
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
                Sentence.of(
                        "The condition \"{0}\" is not known; it is one of {1}, or not-seen.",
                        word, VisitOptions.known(Condition.class))));
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
                Sentence.of(
                        "The condition as left \"{0}\" is not known; it is one of {1}, or as-found.",
                        left, VisitOptions.known(Condition.class)))));
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
                                        Sentence.of(
                                                "The work \"{0}\" is not known; it is one of {1}, or none.",
                                                word, VisitOptions.known(Work.class))))
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
                                ? Sentence.of(
                                        "There is no round in {0}; `round CANYON` enters one.",
                                        canyon.canyon().name())
                                : Sentence.of(
                                        "There is no round \"{0}\" in {1}; `show --ids CANYON` lists its rounds, and"
                                                + " latest is the newest.",
                                        name, canyon.canyon().name())));
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
