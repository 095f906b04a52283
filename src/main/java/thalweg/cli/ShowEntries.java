package thalweg.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.amend.Fate;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Photo;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.logbook.RoundVisit;
import thalweg.logbook.StationRecord;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigInput;
import thalweg.service.AnalyzeRig;
import thalweg.sheet.LaidWords;
import thalweg.sheet.LoadWords;
import thalweg.sheet.PointRemarks;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** Entries as text for a terminal: what they say, what became of them, and their ids where those are asked for. */
final class ShowEntries {

    private static final String MARGIN = "      ";

    /** As many digits of a hash tell one picture from another. */
    private static final int SHORT_HASH = 12;

    private final TextLines out;
    private final Phrases phrases;
    private final UnitSystem units;
    private final boolean ids;

    /**
     * @param out where it goes
     * @param units of figures
     * @param ids whether ids are shown
     */
    ShowEntries(TextLines out, Phrases phrases, UnitSystem units, boolean ids) {
        this.out = out;
        this.phrases = phrases;
        this.units = units;
        this.ids = ids;
    }

    /** The id of something, where ids are shown. */
    void id(Uid uid, String margin) {
        if (ids) {
            out.line(margin + "id " + uid.text());
        }
    }

    void inspection(Entry<Inspection> entry, PartRecord part) {
        Inspection inspection = entry.content();
        Fate fate = Fate.of(entry, part, phrases);
        String rest = Stream.of(
                        inspection.by(),
                        inspection.work().stream()
                                .map(work -> Words.word(phrases, "work", work))
                                .collect(Collectors.joining(", ")),
                        inspection
                                .water()
                                .map(level -> "water " + Words.word(phrases, "water", level))
                                .orElse(""),
                        inspection.note())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
        out.wrapped(
                marked(fate) + inspection.on().print() + "  " + found(inspection) + (rest.isEmpty() ? "" : "  " + rest),
                MARGIN);
        inspection.photos().forEach(photo -> out.wrapped(photo(photo), MARGIN + "  "));
        fate(fate, MARGIN + "  ");
        id(entry.uid(), MARGIN + "  ");
    }

    private static String marked(Fate fate) {
        return fate.counts() ? "" : "(" + fate.word() + ") ";
    }

    private void fate(Fate fate, String margin) {
        fate.lines().forEach(line -> out.wrapped(line, margin));
    }

    private String found(Inspection inspection) {
        if (!inspection.wasSeen()) {
            return phrases.say("condition.not_seen");
        }
        String found = inspection
                .found()
                .map(known -> ConditionWords.told(Optional.of(known), phrases))
                .orElse("");
        return found
                + inspection
                        .left()
                        .map(known -> " -> left " + ConditionWords.told(Optional.of(known), phrases))
                        .orElse("");
    }

    private static String photo(Photo photo) {
        return "photo " + photo.file() + (photo.caption().isEmpty() ? "" : " \"" + photo.caption() + "\"") + ", sha256 "
                + photo.hash().hex().substring(0, SHORT_HASH) + "...";
    }

    void note(Entry<RiggingNote> entry, StationRecord station) {
        Fate fate = Fate.ofNote(entry, station.notes(), phrases);
        out.line("");
        out.line(marked(fate) + "Rigging note of " + entry.content().on().print()
                + by(entry.content().by()));
        entry.content()
                .prose()
                .texts()
                .forEach((heading, text) ->
                        out.wrapped(phrases.labelled(Words.word(phrases, "note_text", heading), text), "  "));
        fate(fate, "  ");
        id(entry.uid(), "  ");
    }

    void analysis(Entry<RigAnalysis> entry, StationRecord station) {
        Fate fate = Fate.ofAnalysis(entry, station.analyses(), phrases);
        out.line("");
        Optional<RigInput> rig = AnalyzeRig.kept(entry.content());
        String name = rig.map(RigInput::name).orElse("");
        String called = name.isBlank() ? "" : " \"" + name + "\"";
        out.line(marked(fate) + "Rig analysis" + called + " of "
                + entry.content().on().print() + by(entry.content().by()) + ", program "
                + entry.content().program());
        if (station.isOld(entry.content())) {
            out.line("  OUT OF DATE: parts of this station have changed since.");
        }
        rig.ifPresent(input -> figures(input, station));
        fate(fate, "  ");
        id(entry.uid(), "  ");
    }

    /** The figures in brief, and what is on record of the points that they count on. */
    private void figures(RigInput input, StationRecord station) {
        PointRemarks.of(input, station, phrases, units)
                .forEach(remark -> out.wrapped((remark.grave() ? "BEWARE: " : "") + remark.text(), "  "));
        RigAnswer answer = AnalyzeRig.answer(input);
        String weight = new LoadWords(phrases, units).of(input.load());
        out.wrapped(new LaidWords(phrases, units).layout(input) + ", " + weight, "  ");
        out.wrapped(
                answer.steady().points().stream()
                        .map(point -> phrases.say(
                                "rig.point.brief",
                                point.point(),
                                point.force().print(units),
                                answer.hardest(point.point()).print(units)))
                        .collect(Collectors.joining("; ")),
                "  ");
        out.wrapped(
                answer.checks().stream()
                        .map(check -> check.letter().name() + " "
                                + phrases.say("rig.verdict." + check.verdict().word()))
                        .collect(Collectors.joining(", ")),
                "  ");
    }

    private static String by(String name) {
        return name.isEmpty() ? "" : " by " + name;
    }

    /** The rounds of a canyon with what was found on each; nothing where there are none. */
    void rounds(CanyonRecord canyon) {
        List<RoundVisit> visits = RoundVisit.all(canyon);
        if (!visits.isEmpty()) {
            out.line("");
            out.line("Rounds:");
        }
        for (RoundVisit visit : visits) {
            Round round = visit.round().content();
            Fate fate = Fate.ofRound(visit.round(), canyon.rounds(), phrases);
            String water = round.water()
                    .map(level -> ", water " + Words.word(phrases, "water", level))
                    .orElse("");
            out.line("  " + marked(fate) + round.on().print() + by(round.by()) + water);
            out.wrapped(round.note(), "    ");
            fate(fate, "    ");
            id(visit.round().uid(), "    ");
            visit.looks()
                    .forEach(look -> out.wrapped(
                            look.station().station().name() + ", "
                                    + phrases.labelled(
                                            look.part().part().label(),
                                            found(look.inspection().content())),
                            "    "));
        }
    }
}
