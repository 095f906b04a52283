package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import thalweg.units.Angle;

/** The figures of one analysis: what they rest on, the force on each point, and the checklist. */
final class FigureTables {

    private static final double STRAIGHT_DOWN_WITHIN_DEGREES = 0.5;

    private static final Set<String> LETTERS = Set.of("E", "A", "R", "NE", "S", "T");

    private static final Set<String> ASSUMED = Set.of(
            "sway_deg",
            "lean_out_deg",
            "rope_out_m",
            "load_spread",
            "spread",
            "strands",
            "slider_strands",
            "captured",
            "friction",
            "sling_EA_kN");

    private final Wording wording;

    FigureTables(Wording wording) {
        this.wording = wording;
    }

    Block basis(AnalysisFigures figures) {
        String made = wording.say(
                "sheet.analysis.made.by",
                wording.ages().ago(figures.on()),
                wording.by(figures.by()),
                figures.program());
        List<Fact> facts = new ArrayList<>(List.of(
                wording.fact("sheet.analysis.made", Words.of(made)),
                wording.fact("sheet.analysis.rig", wording.orElse(figures.rig(), "sheet.analysis.rig.unnamed")),
                wording.fact("sheet.analysis.layout", Words.of(figures.layout())),
                wording.fact("sheet.analysis.load", Words.of(figures.load())),
                wording.fact("sheet.analysis.assumed", assumed(figures.assumed())),
                wording.fact("sheet.analysis.angle", angles(figures))));
        if (!figures.material().isBlank()) {
            facts.add(wording.fact("sheet.analysis.material", Words.of(figures.material())));
        }
        return new Block.Facts(facts);
    }

    private List<Words> assumed(List<AnalysisFigures.Assumption> assumed) {
        if (assumed.isEmpty()) {
            return List.of(wording.words("sheet.analysis.assumed.nothing"));
        }
        return assumed.stream()
                .map(assumption -> Words.of(
                        assumption.value().isBlank()
                                ? wording.say("sheet.analysis.assumed.lost", named(assumption.key()))
                                : wording.say(
                                        "sheet.analysis.assumed.value", named(assumption.key()), assumption.value()),
                        Tone.CAUTION))
                .toList();
    }

    /** A key of a rig file in words; one that this version does not know stands as it is. */
    private String named(String key) {
        return ASSUMED.contains(key) ? wording.say("sheet.assumed." + key) : key;
    }

    private List<Words> angles(AnalysisFigures figures) {
        List<Words> lines = new ArrayList<>();
        figures.angle().ifPresent(angle -> lines.add(wording.words("sheet.analysis.angle.aim", angle.print())));
        figures.worstAngle().ifPresent(angle -> lines.add(wording.words("sheet.analysis.angle.worst", angle.print())));
        return lines.isEmpty() ? List.of(wording.words("sheet.analysis.angle.none")) : lines;
    }

    Block points(AnalysisFigures figures) {
        List<String> columns = List.of(
                wording.say("sheet.analysis.point"),
                wording.say("sheet.analysis.steady"),
                wording.say("sheet.analysis.share"),
                wording.say("sheet.analysis.worst"));
        return new Block.Table(
                wording.say("sheet.analysis.points"),
                columns,
                figures.points().stream().map(this::row).toList());
    }

    private List<Cell> row(AnalysisFigures.PointFigures point) {
        return List.of(
                Cell.of(Words.of(point.name())),
                Cell.of(Words.of(wording.force(point.steady()))),
                Cell.of(wording.words("sheet.analysis.percent", percent(point.share()))),
                new Cell(List.of(
                        Words.of(wording.force(point.worst())),
                        wording.words(
                                point.byFriction() ? "sheet.analysis.worst.at.friction" : "sheet.analysis.worst.at",
                                direction(point.worstAt())))));
    }

    /** What comes of the loss of each point; nothing where the analysis has none. */
    Optional<Block> losses(AnalysisFigures figures) {
        if (figures.losses().isEmpty()) {
            return Optional.empty();
        }
        List<String> columns = List.of(
                wording.say("sheet.analysis.loss.point"),
                wording.say("sheet.analysis.loss.peak"),
                wording.say("sheet.analysis.loss.left"));
        return Optional.of(new Block.Table(
                wording.say("sheet.analysis.losses"),
                columns,
                figures.losses().stream().map(this::row).toList()));
    }

    private List<Cell> row(LossFigures loss) {
        Cell point = Cell.of(Words.of(loss.point()));
        if (loss.after().isEmpty()) {
            return List.of(point, Cell.NONE, Cell.of(wording.toned(Tone.UNSAFE, "sheet.analysis.loss.lost")));
        }
        LossFigures.After after = loss.after().get();
        List<Words> peaks = new ArrayList<>();
        after.peaks()
                .forEach(peak -> peaks.add(wording.words(
                        "sheet.analysis.loss.on",
                        peak.point(),
                        wording.force(peak.force()),
                        wording.force(peak.low()),
                        wording.force(peak.high()))));
        if (peaks.isEmpty()) {
            peaks.add(wording.unknown());
        } else if (after.rising()) {
            peaks.add(wording.toned(Tone.CAUTION, "sheet.analysis.loss.rising"));
        }
        if (after.mayLieOutside()) {
            peaks.add(wording.toned(Tone.CAUTION, "sheet.analysis.loss.outside"));
        }
        String drop = after.drop().metres() < 0 ? "sheet.analysis.loss.rises" : "sheet.analysis.loss.drops";
        return List.of(
                point,
                new Cell(peaks),
                new Cell(List.of(
                        held(after),
                        Words.of(after.why()),
                        wording.words(drop, wording.handWidths(after.drop()), wording.handWidths(after.swing())))));
    }

    /** That a strand still holds is never said without whether it is strong enough. */
    private Words held(LossFigures.After after) {
        return after.within()
                .map(within -> within
                        ? wording.words("sheet.analysis.loss.within")
                        : wording.toned(Tone.UNSAFE, "sheet.analysis.loss.over"))
                .orElseGet(() -> wording.toned(Tone.UNKNOWN, "sheet.analysis.loss.unknown"));
    }

    /** Nothing where the analysis was made without it. */
    Optional<Block> safety(AnalysisFigures figures) {
        if (figures.safety().isEmpty()) {
            return Optional.empty();
        }
        List<String> columns = List.of(
                wording.say("sheet.analysis.part"),
                wording.say("sheet.analysis.safety.steady"),
                wording.say("sheet.analysis.safety.after_loss"));
        List<List<Cell>> rows = figures.safety().stream()
                .map(line -> List.of(
                        Cell.of(Words.of(line.part())),
                        Cell.of(Words.of(line.steady())),
                        Cell.of(Words.of(line.afterLoss()))))
                .toList();
        return Optional.of(new Block.Table(wording.say("sheet.analysis.safety"), columns, rows));
    }

    /** What the strengths rest on; nothing where none is said to rest on anything. */
    Optional<Block> strengths(AnalysisFigures figures) {
        if (figures.strengths().isEmpty()) {
            return Optional.empty();
        }
        List<Words> lines = figures.strengths().stream().map(Words::of).toList();
        return Optional.of(new Block.Facts(List.of(wording.fact("sheet.analysis.strengths", lines))));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f", share * 100);
    }

    private String direction(Angle angle) {
        if (Math.abs(angle.degrees()) < STRAIGHT_DOWN_WITHIN_DEGREES) {
            return wording.say("sheet.analysis.direction.down");
        }
        String side = angle.degrees() < 0 ? "left" : "right";
        return wording.say("sheet.analysis.direction." + side, new Angle(Math.abs(angle.degrees())).print());
    }

    /** The letters say little to a group that has not learnt them. */
    private String letter(String letter) {
        return LETTERS.contains(letter)
                ? wording.say("sheet.analysis.check." + letter.toLowerCase(Locale.ROOT))
                : letter;
    }

    /** Nothing where the analysis was made without a checklist. */
    Optional<Block> checks(AnalysisFigures figures) {
        if (figures.checks().isEmpty()) {
            return Optional.empty();
        }
        List<String> columns = List.of(
                wording.say("sheet.analysis.check"),
                wording.say("sheet.analysis.verdict"),
                wording.say("sheet.analysis.why"));
        List<List<Cell>> rows = figures.checks().stream()
                .map(check -> List.of(
                        Cell.of(Words.of(letter(check.letter()))),
                        Cell.of(Words.of(check.verdict())),
                        Cell.of(Words.of(check.why()))))
                .toList();
        return Optional.of(new Block.Table(wording.say("sheet.analysis.checks"), columns, rows));
    }
}
