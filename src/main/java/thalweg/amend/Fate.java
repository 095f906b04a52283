package thalweg.amend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.logbook.Amendments;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.route.PartialDate;
import thalweg.text.Phrases;

/**
 * What became of an entry, in words.
 *
 * @param word "withdrawn" or "corrected"; empty text where it counts
 * @param lines everything there is to say: who withdrew it and why, what took its place, what it took the place of
 */
public record Fate(String word, List<String> lines) {

    public Fate {
        lines = List.copyOf(lines);
    }

    /** Of an inspection. */
    public static Fate of(Entry<Inspection> entry, PartRecord part, Phrases phrases) {
        return of(entry, part.inspections(), Inspection::on, phrases);
    }

    /** Of a rigging note among those of its station. */
    public static Fate ofNote(Entry<RiggingNote> entry, List<Entry<RiggingNote>> notes, Phrases phrases) {
        return of(entry, notes, RiggingNote::on, phrases);
    }

    /** Of an analysis among those of its station. */
    public static Fate ofAnalysis(Entry<RigAnalysis> entry, List<Entry<RigAnalysis>> analyses, Phrases phrases) {
        return of(entry, analyses, RigAnalysis::on, phrases);
    }

    /** Of a round among those of its canyon. */
    public static Fate ofRound(Entry<Round> entry, List<Entry<Round>> rounds, Phrases phrases) {
        return of(entry, rounds, Round::on, phrases);
    }

    private static <T> Fate of(Entry<T> entry, List<Entry<T>> all, Function<T, PartialDate> on, Phrases phrases) {
        List<String> lines = new ArrayList<>();
        entry.withdrawal()
                .ifPresent(withdrawal -> lines.add(phrases.say(
                        "fate.withdrawn",
                        withdrawal.reason(),
                        withdrawal.author(),
                        Moment.print(phrases, withdrawal.at()))));
        Optional<Entry<T>> successor = entry.corrected() ? Amendments.successor(entry.uid(), all) : Optional.empty();
        successor.ifPresent(other -> lines.add(phrases.say(
                "fate.corrected",
                on.apply(other.content()).print(),
                other.author(),
                Moment.print(phrases, other.at()),
                other.correction().map(correction -> correction.reason()).orElse(""))));
        entry.correction().ifPresent(correction -> lines.add(phrases.say("fate.corrects", correction.reason())));
        String word = entry.counts()
                ? ""
                : phrases.say(entry.withdrawal().isPresent() ? "fate.word.withdrawn" : "fate.word.corrected");
        return new Fate(word, lines);
    }

    /** Whether the entry counts. */
    public boolean counts() {
        return word.isEmpty();
    }
}
