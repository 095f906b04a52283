package thalweg.exchange.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.FieldWriter;
import thalweg.json.Finding;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.json.JsonException;
import thalweg.json.JsonText;
import thalweg.rig.CheckedRig;
import thalweg.rig.LimitDraft;
import thalweg.rig.LoadDraft;
import thalweg.rig.PointDraft;
import thalweg.rig.PointKind;
import thalweg.rig.RedirectDraft;
import thalweg.rig.RigDraft;
import thalweg.rig.RigFinding;
import thalweg.rig.RigInput;
import thalweg.rig.RigKind;
import thalweg.rig.SetupDraft;
import thalweg.rig.StrandTraitsDraft;

/** Reads and writes the file that states a rig. */
public final class RigFile {

    private static final int LONGEST_NAME = 120;

    private static final String RIG = "rig";
    private static final String LOAD = "load";

    private RigFile() {}

    /**
     * The rig in the file.
     *
     * @param name of the file, for messages
     * @throws InputException when it is no rig that can be computed, with every reason
     */
    public static RigInput read(String name, byte[] bytes) {
        return checked(name, JsonDocument.read(name, bytes));
    }

    /**
     * The rig in a text that was kept.
     *
     * @throws InputException when it is no rig that can be computed
     */
    public static RigInput read(String name, String text) {
        return checked(name, JsonDocument.read(name, text));
    }

    /**
     * The rig on one line of a file that holds a rig a line, or everything that is wrong with the line.
     *
     * @param name of the file, for messages
     * @param line its number, from 1
     */
    static CheckedRig line(String name, long line, byte[] bytes) {
        Findings findings = new Findings();
        RigDraft draft;
        try {
            draft = draft(JsonDocument.readLine(name, line, bytes).reader(findings));
        } catch (JsonException e) {
            return new CheckedRig(Optional.empty(), List.of(new RigFinding("", e.saying())));
        }
        if (findings.none()) {
            return draft.check();
        }
        return new CheckedRig(
                Optional.empty(),
                findings.all().stream()
                        .map(one -> new RigFinding(one.path(), one.what()))
                        .toList());
    }

    private static RigInput checked(String name, JsonDocument document) {
        Findings findings = new Findings();
        RigDraft draft = draft(document.reader(findings));
        if (!findings.none()) {
            throw refusal(name, findings.all().stream().map(Finding::saying).toList());
        }
        CheckedRig checked = draft.check();
        return checked.input()
                .orElseThrow(() -> refusal(
                        name,
                        checked.findings().stream().map(one -> one.saying()).toList()));
    }

    private static InputException refusal(String name, List<Sentence> reasons) {
        return new InputException(Sentence.reasons(Sentence.of("{0} is no rig that can be computed:", name), reasons));
    }

    private static RigDraft draft(FieldReader in) {
        String name = in.textOrEmpty("name", LONGEST_NAME);
        List<PointDraft> points =
                in.objects("points").stream().map(RigFile::point).toList();
        FieldReader loadPart = part(in, LOAD);
        Optional<RedirectDraft> redirect = loadPart.object("redirect").map(RedirectFile::read);
        LoadDraft load = load(loadPart);
        SetupDraft rig = setup(part(in, RIG));
        in.refuseUnasked();
        return new RigDraft(name, points, load, rig, redirect);
    }

    /** The object under that key; an empty one stands in where it is missing, and its own keys are then missed. */
    private static FieldReader part(FieldReader in, String key) {
        return in.object(key).orElseGet(() -> {
            if (!in.has(key)) {
                in.refuse(key, Sentence.of("is missing; it should be an object in braces."));
            }
            return FieldReader.of(Json.fields().done(), new Findings());
        });
    }

    private static PointDraft point(FieldReader in) {
        PointDraft point = new PointDraft(
                in.textOrEmpty("name", LONGEST_NAME),
                in.reals("at").orElse(List.of()),
                in.real("strength_kN"),
                in.real("spread"),
                in.flag("holds_alone"),
                RigTraitsText.point(in),
                in.word("is", PointKind.class),
                in.object("sling").map(SlingFile::read));
        in.refuseUnasked();
        return point;
    }

    private static LoadDraft load(FieldReader in) {
        LoadDraft load = new LoadDraft(
                in.real("mass_kg"),
                in.real("force_kN"),
                in.real("toward_deg"),
                in.real("sway_deg"),
                in.real("lean_out_deg"),
                in.real("rope_out_m"),
                in.real("rope_EA_kN"),
                in.real("load_spread"),
                in.real("factor"));
        in.refuseUnasked();
        return load;
    }

    private static SetupDraft setup(FieldReader in) {
        Optional<RigKind> kind = in.word("kind", RigKind.class);
        List<Double> focus = in.reals("focus").orElse(List.of());
        OptionalDouble stiffness = in.real("EA_kN");
        OptionalLong strands = in.whole("strands", 1, 100);
        Map<String, Double> slack = new LinkedHashMap<>();
        in.object("slack_m").ifPresent(inner -> {
            for (String point : inner.unasked()) {
                inner.real(point).ifPresent(metres -> slack.put(point, metres));
            }
        });
        Optional<Boolean> captured = in.flag("captured");
        OptionalDouble friction = in.real("friction");
        LimitDraft limits =
                new LimitDraft(in.reals("limit_m"), in.reals("limit_range_deg"), in.whole("slider_strands", 1, 100));
        OptionalDouble strand = in.real("strand_kN");
        OptionalDouble knot = in.real("knot_efficiency");
        StrandTraitsDraft traits = RigTraitsText.strands(in);
        in.refuseUnasked();
        return new SetupDraft(kind, focus, stiffness, strands, slack, captured, friction, limits, strand, knot, traits);
    }

    /** The rig as the text of a file: what was assumed is left out, so that it reads back as assumed. */
    public static String write(RigInput input) {
        return JsonText.indented(write(RigDraft.of(input)));
    }

    /** A rig that need not be one that can be computed. */
    public static Json.Fields write(RigDraft draft) {
        FieldWriter file = Json.fields().put("name", draft.name());
        file.put(
                "points",
                new Json.Items(draft.points().stream().map(RigFile::point).toList()));
        file.put(LOAD, load(draft));
        file.put(RIG, setup(draft.rig()));
        return file.done();
    }

    /** The same read back; empty where it is none. */
    public static Optional<RigDraft> draft(Json.Fields written) {
        Findings findings = new Findings();
        RigDraft draft = draft(FieldReader.of(written, findings));
        return findings.none() ? Optional.of(draft) : Optional.empty();
    }

    private static Json point(PointDraft point) {
        FieldWriter fields = Json.fields()
                .put("name", point.name())
                .put("at", numbers(point.at()))
                .putKnown("strength_kN", number(point.strengthKilonewtons()))
                .putKnown("spread", number(point.spread()))
                .putKnown("holds_alone", point.holdsAlone().map(Json::of))
                .putWord("is", point.is())
                .putKnown("sling", point.sling().map(SlingFile::write));
        return RigTraitsText.write(point.traits(), fields).done();
    }

    private static Json load(RigDraft draft) {
        LoadDraft load = draft.load();
        return Json.fields()
                .putKnown("mass_kg", number(load.massKilograms()))
                .putKnown("force_kN", number(load.forceKilonewtons()))
                .putKnown("factor", number(load.factor()))
                .putKnown("toward_deg", number(load.towardDegrees()))
                .putKnown("sway_deg", number(load.swayDegrees()))
                .putKnown("lean_out_deg", number(load.leanOutDegrees()))
                .putKnown("rope_out_m", number(load.ropeOutMetres()))
                .putKnown("rope_EA_kN", number(load.ropeStiffnessKilonewtons()))
                .putKnown("load_spread", number(load.spread()))
                .putKnown("redirect", draft.redirect().map(RedirectFile::write))
                .done();
    }

    private static Json setup(SetupDraft rig) {
        FieldWriter slack = Json.fields();
        rig.slackMetres().forEach((point, metres) -> slack.put(point, Json.rounded(metres, 6)));
        FieldWriter fields = Json.fields()
                .putWord("kind", rig.kind())
                .put("focus", numbers(rig.focus()))
                .putKnown("EA_kN", number(rig.stiffnessKilonewtons()))
                .putKnown("strands", whole(rig.strands()))
                .putKnown("slack_m", rig.slackMetres().isEmpty() ? Optional.empty() : Optional.of(slack.done()))
                .putKnown("captured", rig.captured().map(Json::of))
                .putKnown("limit_m", rig.limits().metres().map(RigFile::numbers))
                .putKnown("limit_range_deg", rig.limits().rangeDegrees().map(RigFile::numbers))
                .putKnown("slider_strands", whole(rig.limits().sliderStrands()))
                .putKnown("friction", number(rig.friction()))
                .putKnown("strand_kN", number(rig.strandKilonewtons()))
                .putKnown("knot_efficiency", number(rig.knotEfficiency()));
        return RigTraitsText.write(rig.traits(), fields).done();
    }

    private static Optional<Json> whole(OptionalLong value) {
        return value.isPresent() ? Optional.of(Json.of(value.getAsLong())) : Optional.empty();
    }

    private static Optional<Json> number(OptionalDouble value) {
        return value.isPresent() ? Optional.of(Json.rounded(value.getAsDouble(), 6)) : Optional.empty();
    }

    private static Json numbers(List<Double> values) {
        return new Json.Items(
                values.stream().map(value -> Json.rounded(value, 6)).toList());
    }
}
