package thalweg.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.exchange.json.RigAnswerText;
import thalweg.logbook.Entry;
import thalweg.logbook.InventoryFingerprint;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.StationRecord;
import thalweg.rig.PeakForces;
import thalweg.rig.PeakRange;
import thalweg.rig.PointLoss;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigCaution;
import thalweg.rig.RigDefaults;
import thalweg.rig.RigDrawing;
import thalweg.rig.RigInput;
import thalweg.rig.Sliding;
import thalweg.sheet.AnalysisFigures;
import thalweg.sheet.LaidWords;
import thalweg.sheet.LoadWords;
import thalweg.sheet.LossFigures;
import thalweg.sheet.PointRemarks;
import thalweg.sheet.RedirectWords;
import thalweg.sheet.SafetyWords;
import thalweg.sheet.SlingWords;
import thalweg.sheet.StrengthWords;
import thalweg.text.Phrases;
import thalweg.units.Angle;
import thalweg.units.UnitSystem;

/** Turns an analysis that was kept into figures to show. */
final class AnalysisView {

    private final Phrases phrases;
    private final UnitSystem units;
    private final Answers answers;

    AnalysisView(Phrases phrases, UnitSystem units, Answers answers) {
        this.answers = answers;
        this.phrases = phrases;
        this.units = units;
    }

    /**
     * The figures, computed again from the input that was kept. Where this version computes others than were kept, that
     * is said among the changes. Empty where this version cannot read the input.
     */
    Optional<AnalysisFigures> of(StationRecord station, Entry<RigAnalysis> entry) {
        RigAnalysis kept = entry.content();
        Optional<RigInput> input = AnalyzeRig.kept(kept);
        if (input.isEmpty()) {
            return Optional.empty();
        }
        Answers.Said said = answers.about(input.get());
        RigAnswer answer = said.answer();
        List<String> changes = new ArrayList<>();
        for (InventoryFingerprint.Change change : kept.inventory().changesTo(station.inventory())) {
            String part = station.part(change.part())
                    .map(record -> record.part().label())
                    .orElse(change.part().tail());
            changes.add(phrases.say("rig.change." + change.kind().name().toLowerCase(Locale.ROOT), part));
        }
        if (!RigAnswerText.agrees(answer, kept.result())) {
            changes.add(phrases.say("rig.change.program", kept.program()));
        }
        return Optional.of(figures(entry, said, PointRemarks.of(answer.input(), station, phrases, units), changes));
    }

    private AnalysisFigures figures(
            Entry<RigAnalysis> entry, Answers.Said said, List<PointRemarks.Remark> remarks, List<String> changes) {
        RigAnswer answer = said.answer();
        RigInput input = answer.input();
        SafetyWords safety = new SafetyWords(phrases);
        return new AnalysisFigures(
                entry.uid(),
                entry.content().on(),
                entry.content().by(),
                entry.content().program(),
                input.name(),
                layout(answer),
                load(input),
                answer.steady().points().stream()
                        .map(point -> new AnalysisFigures.PointFigures(
                                point.point(),
                                point.force(),
                                answer.hardest(point.point()),
                                answer.sector().worstOf(point.point()).direction(),
                                answer.frictionAdds(point.point()),
                                point.share()))
                        .toList(),
                answer.steady().angle(),
                answer.sector().widest().map(widest -> widest.angle()),
                answer.losses().stream().map(loss -> loss(loss, said.peaks())).toList(),
                answer.checks().stream()
                        .map(check -> new AnalysisFigures.CheckLine(
                                check.letter().name(),
                                phrases.say("rig.verdict." + check.verdict().word()),
                                phrases.say(check.saying())))
                        .toList(),
                answer.safety().stream()
                        .map(part -> new AnalysisFigures.SafetyLine(
                                phrases.say(part.called()),
                                safety.ratioAndWhere(part, part.steady()),
                                safety.ratioAndWhere(part, part.afterLoss())))
                        .toList(),
                new StrengthWords(phrases, units).lines(answer),
                new SlingWords(phrases, units).material(answer.material()),
                answer.assumed().stream()
                        .map(key -> new AnalysisFigures.Assumption(key, assumed(input, key)))
                        .toList(),
                RigDrawing.of(answer, units, phrases::say),
                remarks,
                changes);
    }

    /** How the strands are laid, and what is slung round points, with what no figure covers of them. */
    private String layout(RigAnswer answer) {
        List<String> parts = new ArrayList<>();
        parts.add(new LaidWords(phrases, units).sentence(answer.input()));
        List<String> slings = new SlingWords(phrases, units).sentences(answer);
        if (!slings.isEmpty()) {
            parts.addAll(slings);
            RigCaution.of(answer).stream()
                    .filter(RigCaution::isNatural)
                    .forEach(caution -> parts.add(phrases.caution(caution.key())));
        }
        parts.addAll(new RedirectWords(phrases, units).sentences(answer));
        return String.join(" ", parts);
    }

    private LossFigures loss(PointLoss loss, PeakRange ranges) {
        Optional<PeakRange.Loss> range = ranges.after(loss.point());
        return new LossFigures(
                loss.point(),
                loss.aftermath()
                        .map(after -> new LossFigures.After(
                                after.within().verdict(),
                                phrases.say(after.within().saying()),
                                after.drop(),
                                after.swing(),
                                after.peaks().stream()
                                        .flatMap(peaks -> peaks.points().stream())
                                        .map(peak -> peak(peak, range.flatMap(known -> known.on(peak.point()))))
                                        .toList(),
                                after.peaks().map(PeakForces::rising).orElse(false),
                                range.map(PeakRange.Loss::mayLieOutside).orElse(false))));
    }

    private static LossFigures.Peak peak(PeakForces.OnPoint peak, Optional<PeakRange.OnPoint> range) {
        return new LossFigures.Peak(
                peak.point(),
                peak.force(),
                range.map(PeakRange.OnPoint::low).orElse(peak.force()),
                range.map(PeakRange.OnPoint::high).orElse(peak.force()));
    }

    private String load(RigInput input) {
        return new LoadWords(phrases, units).withAim(input.statedLoad());
    }

    /** What the calculator took where nobody said; the points' spread is the same for all that lack one. */
    private String assumed(RigInput input, String key) {
        return switch (key) {
            case "sway_deg" -> new Angle(input.statedLoad().sway().degrees()).print();
            case "lean_out_deg" -> new Angle(input.statedLoad().leanOut().degrees()).print();
            case "rope_out_m" -> input.load().ropeOut().printFine(units);
            case "load_spread" -> Double.toString(input.load().spread());
            case "spread" -> Double.toString(RigDefaults.SPREAD);
            case "sling_EA_kN" -> input.rig().stiffness().print(units);
            case "strands" -> Integer.toString(input.rig().strands());
            case "slider_strands" ->
                input.rig()
                        .limiters()
                        .map(limiters -> Integer.toString(limiters.sliderStrands()))
                        .orElse("");
            case "captured" -> input.rig().sliding().map(Sliding::captured).orElse(RigDefaults.CAPTURED) ? "yes" : "no";
            case "axis" -> phrases.say("rig.assumed.axis");
            case "loaded" -> phrases.say("rig.assumed.loaded");
            case "friction" -> Double.toString(input.rig().friction().orElse(RigDefaults.FRICTION));
            default -> "";
        };
    }
}
