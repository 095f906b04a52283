package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.body.FactBody;
import thalweg.body.PrivateNoteBody;
import thalweg.body.SheetGivenBody;
import thalweg.body.TripBody;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsWriter;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.LineRecord;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.PrivateNote;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Trip;
import thalweg.service.MakeSheet;
import thalweg.testing.PdfText;
import thalweg.testing.Planted;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomThings;

/** Nothing of what stays with one database comes out where others may see it; a word in each private field tells. */
final class PrivateStaysTest {

    /** A weight and a length of rope whose digits stand nowhere else. */
    private static final long WEIGHT_G = 77_731;

    private static final long ROPE_CM = 73_937;

    private static final String AT = "2026-11-20T10:00:00Z";

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));
    private final List<String> secrets =
            new ArrayList<>(List.of("77731", "77.7", "78 kg", "171 lb", "73937", "739.4", "2426 ft"));

    @BeforeEach
    void takeIn() throws IOException {
        shell = new Shell(home);
        RandomRecords random = new RandomRecords(5, RandomRecords.Fill.EVERYTHING);
        RandomThings things = random.things();
        Uid uid = random.uid();
        Uid obstacle = random.uid();
        StationRecord station =
                new StationRecord(things.station(random.uid(), obstacle, "V"), List.of(), List.of(), List.of());
        CanyonRecord canyon = new CanyonRecord(
                things.canyon(uid), List.of(new LineRecord(1, things.obstacle(obstacle, uid, "V"), List.of(station))));
        Fact given = FactBody.of(given(things, uid)).fact("Ana", AT);
        LocalRecord local = new LocalRecord(
                List.of(trip(things, random.uid(), uid)),
                List.of(new Entry<>(given.uid(), given(given, uid), "Ana", AT)),
                Stream.of(uid, obstacle, station.station().uid())
                        .map(about -> note(things, random.uid(), about))
                        .toList());
        Path file = Files.writeString(
                home.resolve("records.json"), RecordsWriter.write(List.of(new Parcel(canyon, local))));

        Shell.Ran ran = shell.run("import", file.toString(), "--accept");

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("The file holds private records of");
    }

    private Planted planted(
            Json.Fields body, String prefix, Function<FieldReader, Boolean> reader, Set<String> leaving) {
        Planted planted = Planted.in(body, prefix, reader, leaving);
        secrets.addAll(planted.all());
        return planted;
    }

    private Trip trip(RandomThings things, Uid uid, Uid canyon) {
        Json person = Json.fields()
                .put("name", "?")
                .put("role", Trip.Role.LEAD)
                .put("weight_g", WEIGHT_G)
                .done();
        Json rope = Json.fields().put("length_cm", ROPE_CM).put("kind", "?").done();
        Json time = Json.fields()
                .put("place", canyon.text())
                .put("label", "?")
                .put("reached_min", 605)
                .done();
        Json.Fields body = TripBody.write(things.trip(uid, canyon))
                .with("people", new Json.Items(List.of(person, person)))
                .with("ropes", new Json.Items(List.of(rope)))
                .with("times", new Json.Items(List.of(time)));
        Planted planted =
                planted(body, "trip", in -> TripBody.read(uid, canyon, in).isPresent(), Set.of(TripBody.PARENT));
        assertThat(planted.words().keySet()).containsExactlyInAnyOrder("name", "people", "ropes", "note", "times");
        return TripBody.read(uid, canyon, planted.reader()).orElseThrow();
    }

    private SheetGiven given(RandomThings things, Uid canyon) {
        Planted planted = planted(
                SheetGivenBody.write(things.sheetGiven(canyon)),
                "given",
                in -> SheetGivenBody.read(canyon, in).isPresent(),
                Set.of());
        assertThat(planted.words().keySet()).containsExactlyInAnyOrder("to", "file");
        return SheetGivenBody.read(canyon, planted.reader()).orElseThrow();
    }

    private static SheetGiven given(Fact fact, Uid canyon) {
        return SheetGivenBody.read(canyon, FieldReader.of(fact.body(), new Findings()))
                .orElseThrow();
    }

    private PrivateNote note(RandomThings things, Uid uid, Uid about) {
        Planted planted = planted(
                PrivateNoteBody.write(things.privateNote(uid, about)),
                "note" + about.tail(),
                in -> PrivateNoteBody.read(uid, about, in).isPresent(),
                Set.of(PrivateNoteBody.PARENT));
        assertThat(planted.words().keySet()).containsExactly("text");
        return PrivateNoteBody.read(uid, about, planted.reader()).orElseThrow();
    }

    private String canyon() {
        return shell.run("list", "--json").out().replaceAll("(?s).*?\"uid\": \"([^\"]+)\".*", "$1");
    }

    private String station() {
        return shell.run("show", canyon()).out().replaceAll("(?s).*  ([0-9a-f-]{36})\\s.*", "$1");
    }

    static Stream<List<String>> shared() {
        Stream<List<String>> sheets = Stream.of(MakeSheet.Format.values())
                .filter(format -> format != MakeSheet.Format.PDF)
                .map(format -> format.name().toLowerCase(Locale.ROOT))
                .flatMap(format -> Stream.of(
                        List.of("sheet", "CANYON", "--as", format),
                        List.of("sheet", "CANYON", "--as", format, "--station", "1"),
                        List.of("sheet", "CANYON", "--as", format, "--units", "imperial"),
                        List.of("sheet", "CANYON", "--as", format, "--part", "1..1"),
                        List.of("sheet", "CANYON", "--as", format, "--no-names", "--no-places", "--no-history")));
        Stream<List<String>> exports = Stream.of(ExportAction.Format.values())
                .map(format -> List.of("export", "--as", format.name().toLowerCase(Locale.ROOT)));
        Stream<List<String>> others = Stream.of(
                List.of("export"),
                List.of("export", "CANYON"),
                List.of("show", "CANYON"),
                List.of("show", "CANYON", "--json"),
                List.of("show", "STATION"),
                List.of("show", "STATION", "--json"),
                List.of("list"),
                List.of("list", "--json"),
                List.of("check"));
        return Stream.of(sheets, exports, others).flatMap(commands -> commands);
    }

    @ParameterizedTest
    @MethodSource("shared")
    void whatOthersMaySeeHoldsNothingPrivate(List<String> command) {
        String[] arguments = command.stream()
                .map(word -> word.equals("CANYON") ? canyon() : word.equals("STATION") ? station() : word)
                .toArray(String[]::new);

        Shell.Ran ran = shell.run(arguments);

        assertThat(ran.out()).isNotEmpty();
        assertThat(secrets)
                .allSatisfy(secret -> assertThat(ran.out() + ran.err()).doesNotContain(secret));
    }

    private static String text(Path file) throws IOException {
        return file.toString().endsWith(".pdf")
                ? String.join("\n", PdfText.pages(Files.readAllBytes(file)))
                : Files.readString(file);
    }

    @ParameterizedTest
    @CsvSource({"a4,metric", "a4,imperial", "pocket,metric"})
    void paperHoldsNothingPrivate(String paper, String units) throws IOException {
        Path file = home.resolve("sheet.pdf");

        Shell.Ran ran = shell.run("sheet", canyon(), "--paper", paper, "--units", units, "--out", file.toString());

        assertThat(ran.code()).as(ran.err()).isZero();
        String text = PdfText.unbroken(Files.readAllBytes(file));
        assertThat(text).isNotEmpty();
        assertThat(secrets).allSatisfy(secret -> assertThat(text).doesNotContain(PdfText.unbroken(secret)));
    }

    @Test
    void aSheetThatIsGivenSaysNotToWhom() throws IOException {
        for (MakeSheet.Format format : MakeSheet.Format.values()) {
            Path file = home.resolve("sheet." + format.ending());
            shell.run(
                    "sheet",
                    canyon(),
                    "--as",
                    format.name().toLowerCase(Locale.ROOT),
                    "--out",
                    file.toString(),
                    "--given-to",
                    "qKursz");

            assertThat(text(file)).contains("sheet ").doesNotContain("qKursz");
        }
        assertThat(shell.run("given").out()).contains("qKursz");
    }

    @Test
    void privateNotesAloneStandOnASheetThatAsksForThem() {
        Shell.Ran ran = shell.run("sheet", canyon(), "--as", "text", "--private-notes");

        assertThat(ran.out().replaceAll("\\s+", " ")).contains("PRIVATE", "Private note");
        List<String> shown = secrets.stream().filter(ran.out()::contains).toList();
        assertThat(shown).hasSize(3).allMatch(secret -> secret.startsWith("qnote"));
    }

    @Test
    void allOfItGoesAlongWhereItIsAskedForAndComesBack() throws IOException {
        List<String> words =
                secrets.stream().filter(secret -> secret.startsWith("q")).toList();
        Shell.Ran ran = shell.run("export", "--with-private");

        assertThat(words).hasSize(11);
        assertThat(words).allSatisfy(word -> assertThat(ran.out()).contains(word));
        assertThat(ran.out()).contains("77731", "73937");
        assertThat(shell.run("show", canyon(), "--json", "--with-private").out())
                .isEqualTo(ran.out());

        Path file = Files.writeString(home.resolve("again.json"), ran.out());
        assertThat(shell.run("import", file.toString(), "--dry-run").out()).startsWith("Nothing new in 1 canyon");
        Path other = home.resolve("other.db");
        assertThat(shell.run("import", file.toString(), "--accept", "--db", other.toString())
                        .code())
                .isZero();
        assertThat(shell.run("export", "--with-private", "--db", other.toString())
                        .out())
                .isEqualTo(ran.out());
    }

    @Test
    void whoKeepsThemSeesAllOfThem() {
        String trips = shell.run("trips", "--json").out();
        String seen = trips
                + shell.run("given").out()
                + shell.run("show", canyon(), "--with-private").out();

        assertThat(secrets.stream().filter(secret -> secret.startsWith("q")))
                .allSatisfy(word -> assertThat(seen).contains(word));
        assertThat(shell.run("show", station(), "--with-private").out()).contains("Private, stays here", "qnote");
        assertThat(trips).contains("77731", "73937");
    }
}
