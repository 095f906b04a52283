package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.amend.Fate;
import thalweg.amend.Moment;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Photo;
import thalweg.logbook.Round;
import thalweg.logbook.RoundVisit;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** An entry of the logbook as text to read: what it says, and what became of it. */
final class AboutEntry {

    private static final int MARGIN = 2;

    /** As many digits of a hash tell one picture from another. */
    private static final int SHORT_HASH = 12;

    private AboutEntry() {}

    /** "2026-06-14  ~ worn -> left + sound  (cleaned, water low, Ada)". */
    static String line(Inspection inspection, Surroundings around) {
        String rest = Stream.concat(
                        inspection.work().stream().map(work -> Looks.word(around, "work", work)),
                        Stream.of(
                                inspection
                                        .water()
                                        .map(level -> around.say("about.water", Looks.word(around, "water", level)))
                                        .orElse(""),
                                inspection.by()))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
        return inspection.on().print() + "  " + found(inspection, around) + (rest.isEmpty() ? "" : "  (" + rest + ")");
    }

    /** Condition as found and as left, or that it was not seen. */
    static String found(Inspection inspection, Surroundings around) {
        if (!inspection.wasSeen()) {
            return around.say("condition.mark.unknown") + " " + around.say("condition.not_seen");
        }
        String found = inspection
                .found()
                .map(one -> ConditionWords.told(Optional.of(one), around.phrases()))
                .orElse("");
        String left = inspection
                .left()
                .map(one -> " " + around.say("about.left", ConditionWords.told(Optional.of(one), around.phrases())))
                .orElse("");
        return (found + left).strip();
    }

    /** An inspection as it stands in a list of those of its part. */
    static List<Paragraph> inspection(Entry<Inspection> entry, PartRecord part, Surroundings around) {
        Inspection inspection = entry.content();
        Fate fate = Fate.of(entry, part, around.phrases());
        Style coloured = fate.counts() ? Looks.style(inspection.afterwards()) : Style.FAINT;
        Style plain = fate.counts() ? Style.NORMAL : Style.FAINT;
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(line(inspection, around), coloured));
        if (!inspection.note().isEmpty()) {
            text.add(new Paragraph(MARGIN, inspection.note(), plain));
        }
        inspection.photos().forEach(photo -> text.add(new Paragraph(MARGIN, photo(photo, around), plain)));
        text.addAll(fate(fate));
        return text;
    }

    private static String photo(Photo photo, Surroundings around) {
        String named = photo.caption().isEmpty()
                ? photo.file()
                : around.say("about.photo_caption", photo.file(), photo.caption());
        return around.say("about.photo", named, photo.hash().hex().substring(0, SHORT_HASH));
    }

    /** What became of an entry, each line apart. */
    static List<Paragraph> fate(Fate fate) {
        Style style = fate.counts() ? Style.FAINT : Style.MIND;
        return fate.lines().stream()
                .map(line -> new Paragraph(MARGIN, line, style))
                .toList();
    }

    /** An inspection by itself, with its round and who wrote it down. */
    static List<Paragraph> inspection(
            Entry<Inspection> entry, PartRecord part, CanyonRecord canyon, Surroundings around) {
        List<Paragraph> text = new ArrayList<>(List.of(Paragraph.of(part.part().label(), Style.STRONG)));
        text.addAll(inspection(entry, part, around));
        text.add(Paragraph.gap());
        entry.content()
                .round()
                .flatMap(uid -> canyon.rounds().stream()
                        .filter(round -> round.uid().equals(uid))
                        .findFirst())
                .ifPresent(round -> text.add(
                        Paragraph.of(around.say("about.on_round", RoundChoice.label(round.content(), around)))));
        text.add(written(entry, around));
        return text;
    }

    private static Paragraph written(Entry<?> entry, Surroundings around) {
        return Paragraph.of(
                around.say("about.written", entry.author(), Moment.print(around.phrases(), entry.at())), Style.FAINT);
    }

    /** A round with what was looked at on it. */
    static List<Paragraph> round(RoundVisit visit, CanyonRecord canyon, Surroundings around) {
        Round round = visit.round().content();
        Fate fate = Fate.ofRound(visit.round(), canyon.rounds(), around.phrases());
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(
                around.say(
                        "about.round",
                        Looks.ago(around, round.on()),
                        About.name(around, round.by()),
                        Looks.orUnknown(around, round.water().map(level -> Looks.word(around, "water", level)))),
                fate.counts() ? Style.STRONG : Style.FAINT));
        if (!round.note().isEmpty()) {
            text.add(Paragraph.of(round.note()));
        }
        text.addAll(fate(fate));
        text.add(written(visit.round(), around));
        text.add(Paragraph.gap());
        if (visit.looks().isEmpty()) {
            text.add(Paragraph.of(around.say("about.round_empty"), Style.FAINT));
        }
        String station = "";
        for (RoundVisit.Look look : visit.looks()) {
            String name = look.station().station().name();
            if (!name.equals(station)) {
                text.add(Paragraph.of(name, Style.STRONG));
                station = name;
            }
            Inspection found = look.inspection().content();
            text.add(new Paragraph(
                    MARGIN,
                    around.labelled(look.part().part().label(), found(found, around))
                            + (found.note().isEmpty() ? "" : "; " + found.note()),
                    Looks.style(found.afterwards())));
        }
        return text;
    }
}
