package thalweg.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Photo;
import thalweg.logbook.StationRecord;
import thalweg.logbook.WaterLevel;
import thalweg.route.PartialDate;
import thalweg.timeline.Timeline;
import thalweg.timeline.TimelinePicture;

/** The latest days on which somebody looked at a station, with what they found on each part. */
final class VisitPart {

    private static final List<String> COLUMNS = List.of("sheet.part", "sheet.visit.found", "sheet.visit.done");

    /** Enough for names to be told apart; on a small phone they are a little smaller than the text around. */
    private static final int LETTERS = 44;

    private final Wording wording;

    VisitPart(Wording wording) {
        this.wording = wording;
    }

    /** Entries of one look: the same date, by the same people, in the same water. */
    private record Visit(PartialDate on, String by, Optional<WaterLevel> water) {}

    private record Finding(String part, Inspection inspection) {}

    Optional<Section> of(String station, StationRecord record) {
        List<PartialDate> days = record.parts().stream()
                .flatMap(part -> part.counting().stream())
                .map(Inspection::on)
                .distinct()
                .sorted(Comparator.comparing(PartialDate::latest)
                        .thenComparing(PartialDate::print)
                        .reversed())
                .toList();
        if (days.isEmpty() || !wording.options().contents().history()) {
            return Optional.empty();
        }
        int shown = Math.min(days.size(), wording.options().inspectionsShown());
        List<Block> blocks = new ArrayList<>();
        overTheYears(station, record).ifPresent(blocks::add);
        days.subList(0, shown).forEach(day -> blocks.addAll(tables(day, record)));
        if (days.size() > shown) {
            blocks.add(new Block.Paragraph(
                    wording.toned(Tone.QUIET, "sheet.visits.older", Integer.toString(days.size() - shown))));
        }
        return Optional.of(Section.of(station + "-inspections", wording.say("sheet.visits"), blocks));
    }

    /** Every look at every part, however long ago. */
    private Optional<Block> overTheYears(String station, StationRecord record) {
        Timeline timeline = Timeline.of(record.parts(), wording.options().asOf());
        if (!timeline.canBeDrawn()) {
            return Optional.empty();
        }
        TimelinePicture picture =
                TimelinePicture.of(timeline, 0, timeline.lines().size(), LETTERS, wording.phrases());
        String legend = wording.say("timeline.legend", String.join("; ", picture.legend()));
        List<String> told = new ArrayList<>(timeline.toldByPart(wording.phrases()));
        told.add(legend);
        return Optional.of(new Block.Picture(
                station + "-years",
                wording.say("timeline.heading"),
                picture.drawing(),
                Optional.empty(),
                told,
                Optional.of(legend)));
    }

    private List<Block> tables(PartialDate day, StationRecord record) {
        Map<Visit, List<Finding>> visits = new LinkedHashMap<>();
        for (PartRecord part : record.parts()) {
            for (Inspection found : part.counting()) {
                if (found.on().equals(day)) {
                    visits.computeIfAbsent(new Visit(day, found.by(), found.water()), visit -> new ArrayList<>())
                            .add(new Finding(part.part().label(), found));
                }
            }
        }
        List<Block> tables = new ArrayList<>();
        visits.forEach((visit, findings) -> tables.add(table(visit, findings)));
        return tables;
    }

    private Block table(Visit visit, List<Finding> findings) {
        return new Block.Table(
                caption(visit),
                COLUMNS.stream().map(wording::say).toList(),
                findings.stream().map(this::row).toList());
    }

    private String caption(Visit visit) {
        String when = wording.ages().ago(visit.on());
        String who = wording.by(visit.by());
        return visit.water()
                .map(level -> wording.say("sheet.visit", when, who, wording.of("water", level)))
                .orElseGet(() -> wording.say("sheet.visit.water.unknown", when, who));
    }

    private List<Cell> row(Finding finding) {
        return List.of(
                Cell.of(Words.of(finding.part())),
                new Cell(found(finding.inspection())),
                new Cell(done(finding.inspection())));
    }

    private List<Words> found(Inspection inspection) {
        if (!inspection.wasSeen()) {
            return List.of(wording.toned(Tone.CAUTION, "condition.not_seen"));
        }
        List<Words> lines = new ArrayList<>();
        lines.add(inspection.found().map(wording::condition).orElseGet(wording::unknown));
        inspection.left().ifPresent(left -> lines.add(wording.left(left)));
        return lines;
    }

    /** The picture is not on the sheet; its name finds it. */
    private Words photo(Photo photo) {
        return photo.caption().isEmpty()
                ? wording.words("sheet.visit.photo", photo.file())
                : wording.words("sheet.visit.photo.captioned", photo.file(), photo.caption());
    }

    private List<Words> done(Inspection inspection) {
        List<Words> lines = new ArrayList<>();
        inspection.work().forEach(work -> lines.add(Words.of(wording.of("work", work))));
        if (!inspection.note().isBlank()) {
            lines.add(Words.of(inspection.note()));
        }
        inspection.photos().forEach(photo -> lines.add(photo(photo)));
        return lines.isEmpty() ? List.of(wording.toned(Tone.QUIET, "sheet.visit.nothing")) : lines;
    }
}
