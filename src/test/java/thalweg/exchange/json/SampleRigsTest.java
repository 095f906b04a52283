package thalweg.exchange.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.json.FieldReader;
import thalweg.json.Finding;
import thalweg.json.Findings;
import thalweg.json.JsonDocument;
import thalweg.rig.Analyze;
import thalweg.rig.PointKind;
import thalweg.rig.SlingTie;

class SampleRigsTest {

    private static final Path FOLDER = Path.of("sample-data", "rigs");

    static List<Path> files() throws IOException {
        try (Stream<Path> found = Files.list(FOLDER)) {
            return found.sorted().toList();
        }
    }

    private static FieldReader read(Path file, Findings findings) throws IOException {
        return JsonDocument.read(file.toString(), Files.readAllBytes(file)).reader(findings);
    }

    @Test
    void thereIsARigOfEachSort() throws IOException {
        assertThat(files())
                .extracting(file -> file.getFileName().toString())
                .contains(
                        "limited-slider.json",
                        "over-a-redirect.json",
                        "single-tree.json",
                        "slack-back-up.json",
                        "sliding-loop.json",
                        "slung-beech-and-boulder.json",
                        "three-points-in-depth.json",
                        "triangle.json",
                        "two-bolts-level.json");
    }

    @ParameterizedTest
    @MethodSource("files")
    void aRigHasOnlyKeysThatItsKindKnows(Path file) throws IOException {
        Findings findings = new Findings();
        FieldReader in = read(file, findings);

        String name = in.text("name", 120);
        List<FieldReader> points = in.objects("points");
        FieldReader load = in.object("load").orElseThrow();
        FieldReader rig = in.object("rig").orElseThrow();
        in.refuseUnasked();
        Set<String> names = points(points);
        load(load);
        String kind = rig(rig, names);

        assertThat(findings.all()).extracting(Finding::print).isEmpty();
        assertThat(name).startsWith("Invented: ");
        assertThat(names).hasSameSizeAs(points);
        assertThat(kind).isIn("single", "focused", "sliding", "limited", "loop");
        assertThat(points.size() == 1).isEqualTo(kind.equals("single"));
    }

    @ParameterizedTest
    @MethodSource("files")
    void everySampleIsComputed(Path file) throws IOException {
        assertThat(Analyze.of(RigFile.read(file.toString(), Files.readAllBytes(file)))
                        .losses())
                .isNotEmpty();
    }

    private static Set<String> points(List<FieldReader> points) {
        Set<String> names = new HashSet<>();
        for (FieldReader point : points) {
            names.add(point.text("name", 120));
            assertThat(point.reals("at").orElseThrow()).hasSizeBetween(2, 3);
            point.real("strength_kN").ifPresent(strength -> assertThat(strength).isPositive());
            point.real("spread").ifPresent(spread -> assertThat(spread).isPositive());
            point.flag("holds_alone");
            point.word("is", PointKind.class);
            point.object("sling").ifPresent(SampleRigsTest::sling);
            point.refuseUnasked();
        }
        return names;
    }

    private static void sling(FieldReader sling) {
        assertThat(sling.word("tie", SlingTie.class)).isPresent();
        for (String key : List.of("width_m", "around_m", "reach_m", "EA_kN", "strand_kN", "knot_efficiency")) {
            sling.real(key).ifPresent(value -> assertThat(value).isPositive());
        }
        sling.refuseUnasked();
    }

    private static void redirect(FieldReader redirect) {
        assertThat(redirect.text("name", 120)).isNotBlank();
        assertThat(redirect.reals("at").orElseThrow()).hasSizeBetween(2, 3);
        redirect.real("strength_kN");
        redirect.refuseUnasked();
    }

    private static void load(FieldReader load) {
        assertThat(load.real("mass_kg").isPresent())
                .isNotEqualTo(load.real("force_kN").isPresent());
        for (String key :
                List.of("toward_deg", "sway_deg", "lean_out_deg", "rope_out_m", "rope_EA_kN", "load_spread")) {
            load.real(key);
        }
        load.object("redirect").ifPresent(SampleRigsTest::redirect);
        load.refuseUnasked();
    }

    private static String rig(FieldReader rig, Set<String> names) {
        assertThat(rig.reals("focus").orElseThrow()).hasSizeBetween(2, 3);
        assertThat(rig.real("EA_kN").orElseThrow()).isPositive();
        rig.whole("strands", 1, 4);
        rig.flag("captured");
        rig.real("friction");
        rig.reals("limit_range_deg").ifPresent(range -> assertThat(range).hasSize(2));
        rig.whole("slider_strands", 1, 2);
        rig.real("strand_kN");
        rig.real("knot_efficiency");
        rig.object("slack_m").ifPresent(slack -> {
            assertThat(names).containsAll(slack.fields().values().keySet());
            names.forEach(name ->
                    slack.real(name).ifPresent(length -> assertThat(length).isPositive()));
        });
        String kind = rig.text("kind", 20);
        rig.refuseUnasked();
        return kind;
    }
}
