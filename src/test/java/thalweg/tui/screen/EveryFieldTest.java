package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.body.AnchorBody;
import thalweg.body.CanyonBody;
import thalweg.body.InspectionBody;
import thalweg.body.NoteBody;
import thalweg.body.ObstacleBody;
import thalweg.body.PartBody;
import thalweg.body.PrivateNoteBody;
import thalweg.body.RoundBody;
import thalweg.body.StationBody;
import thalweg.body.TripBody;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonName;
import thalweg.logbook.Entry;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Trip;
import thalweg.testing.Around;
import thalweg.testing.Leaves;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;
import thalweg.testing.RandomThings;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Field;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.TextField;

/** Every field of every record can be entered and changed in a form: the codecs say which fields there are. */
final class EveryFieldTest {

    private static final Uid SELF = new RandomRecords(1, Fill.NOTHING).uid();
    private static final Uid PARENT = new RandomRecords(2, Fill.NOTHING).uid();
    private static final CanyonName CANYON = new CanyonName(PARENT, "Probe", "", false);
    private static final Surroundings AROUND = Around.classic();

    /**
     * A record, its form and its codec.
     *
     * @param name of the kind of record
     * @param make a record with everything in it, from a seed
     * @param task the form of a record, or of a new one
     * @param write the body of a record
     * @param asked the body in the work that a form asks for
     * @param elsewhere paths that are no form's business
     */
    private record Kind<T>(
            String name,
            Function<RandomThings, T> make,
            Function<Optional<T>, FormTask> task,
            Function<T, Json.Fields> write,
            Function<Effect, Json.Fields> asked,
            Set<String> elsewhere) {

        @Override
        public String toString() {
            return name;
        }
    }

    private static Json.Fields thing(Effect ask) {
        return ask instanceof Ask.SaveNew save
                ? save.thing().body()
                : ((Ask.SaveChanged) ask).after().body();
    }

    /** A place in line is given by moving. */
    private static final Set<String> PLACE_IN_LINE = Set.of("order");

    private static final Set<String> PARENTS = Set.of("canyon", "obstacle", "station", "anchor", "about");

    static Stream<Kind<?>> kinds() {
        return Stream.of(
                new Kind<>(
                        "canyon",
                        make -> make.canyon(SELF),
                        before -> new CanyonForm(SELF, before),
                        CanyonBody::write,
                        EveryFieldTest::thing,
                        // There is one datum.
                        Set.of("position.datum")),
                new Kind<>(
                        "obstacle",
                        make -> make.obstacle(SELF, PARENT, "V"),
                        before -> new ObstacleForm(new Go.EditObstacle(SELF, PARENT, "V", before)),
                        ObstacleBody::write,
                        EveryFieldTest::thing,
                        PLACE_IN_LINE),
                new Kind<>(
                        "station",
                        make -> make.station(SELF, PARENT, "V"),
                        before -> new StationForm(new Go.EditStation(SELF, PARENT, "V", before)),
                        StationBody::write,
                        EveryFieldTest::thing,
                        PLACE_IN_LINE),
                new Kind<>(
                        "anchor",
                        make -> make.anchor(SELF, PARENT, "V"),
                        before -> new AnchorForm(new Go.EditAnchor(SELF, PARENT, "V", before)),
                        AnchorBody::write,
                        EveryFieldTest::thing,
                        PLACE_IN_LINE),
                new Kind<>(
                        "part",
                        make -> make.part(SELF, PARENT, "V"),
                        before -> new PartForm(new Go.EditPart(SELF, PARENT, "V", before)),
                        PartBody::write,
                        EveryFieldTest::thing,
                        PLACE_IN_LINE),
                new Kind<>(
                        "round",
                        make -> make.round(PARENT),
                        before -> new RoundForm(new Go.EditRound(PARENT, "Probe", before.map(EveryFieldTest::entry))),
                        RoundBody::write,
                        ask -> RoundBody.write(
                                ask instanceof Ask.AddRound add ? add.round() : ((Amend.CorrectRound) ask).right()),
                        Set.of()),
                new Kind<>(
                        "trip",
                        EveryFieldTest::trip,
                        before -> new TripForm(new Go.EditTrip(SELF, CANYON, before)),
                        TripBody::write,
                        ask -> TripBody.write(((Ask.SaveTrip) ask).after()),
                        // Times are noted place by place, on the trip's own screen.
                        Set.of("times.place", "times.label", "times.reached_min", "times.left_min")),
                new Kind<>(
                        "private note",
                        make -> make.privateNote(SELF, PARENT),
                        before -> new PrivateNoteForm(new Go.EditPrivateNote(
                                PARENT, "Probe", before.stream().toList())),
                        PrivateNoteBody::write,
                        ask -> Json.fields()
                                .put("text", ((Ask.SavePrivateNote) ask).text())
                                .done(),
                        Set.of()));
    }

    private static <T> Entry<T> entry(T content) {
        return new Entry<>(SELF, content, "Ana", "2026-11-25T10:00:00Z");
    }

    /** A trip that has people and ropes. */
    private static Trip trip(RandomThings make) {
        return Stream.generate(() -> make.trip(SELF, PARENT))
                .filter(trip -> !trip.people().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private static <T> T full(Kind<T> kind, long seed) {
        return record(kind, seed, Fill.EVERYTHING);
    }

    private static <T> T record(Kind<T> kind, long seed, Fill fill) {
        return kind.make().apply(new RandomRecords(seed, fill).things());
    }

    private static Map<String, List<Json>> leaves(Json.Fields body) {
        Map<String, List<Json>> leaves = Leaves.of(body);
        PARENTS.forEach(leaves::remove);
        return leaves;
    }

    private static Set<String> differences(Json.Fields one, Json.Fields other) {
        Map<String, List<Json>> before = leaves(one);
        Map<String, List<Json>> after = leaves(other);
        Set<String> paths = new TreeSet<>(before.keySet());
        paths.addAll(after.keySet());
        paths.removeIf(path -> before.getOrDefault(path, List.of()).equals(after.getOrDefault(path, List.of())));
        return paths;
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <T> void everyFieldCanBeChanged(Kind<T> kind) {
        Set<String> changed = new TreeSet<>();
        Set<String> there = new TreeSet<>();
        for (long seed = 1; seed <= 20; seed++) {
            T before = full(kind, seed);
            FormTask task = kind.task().apply(Optional.of(before));
            Form form = task.form(AROUND);
            Fill fill = seed % 2 == 0 ? Fill.EVERYTHING : Fill.SOMETHING;
            Form other = kind.task()
                    .apply(Optional.of(record(kind, seed + 100, fill)))
                    .form(AROUND);
            Json.Fields was = kind.asked().apply(task.ask(new Filled(form, form), AROUND));
            assertThat(was).as("a form that nobody touched changes nothing").isEqualTo(known(kind, before));
            there.addAll(leaves(was).keySet());
            for (Field field : other.fields()) {
                Form filled = form.with(field.key(), field.input());
                if (field.fault().isEmpty()) {
                    Json.Fields after = kind.asked().apply(task.ask(new Filled(form, filled), AROUND));
                    changed.addAll(differences(was, after));
                }
            }
        }
        there.removeAll(kind.elsewhere());

        assertThat(changed).containsAll(there);
    }

    @Test
    void everyFieldOfARiggingNoteCanBeEntered() {
        NoteForm task = new NoteForm(SELF, "Porte", Optional.empty());
        Form blank = task.form(AROUND);
        Form filled = blank;
        for (Field field : blank.fields()) {
            filled = field.manyLines()
                    ? filled.with(field.key(), new Field.Input.Typed(TextField.of("words", 100)))
                    : filled;
        }

        Json.Fields entered = NoteBody.write(((Ask.AddNote) task.ask(new Filled(blank, filled), AROUND)).note());

        RandomThings make = new RandomRecords(1, Fill.EVERYTHING).things();
        assertThat(leaves(entered).keySet())
                .isEqualTo(leaves(NoteBody.write(make.note(SELF))).keySet());
    }

    /** Photos are kept or left out, and a round is chosen; both are tried where somebody walks through the program. */
    @Test
    void everyFieldOfAnInspectionCanBeCorrected() {
        Set<String> changed = new TreeSet<>();
        Set<String> there = new TreeSet<>();
        for (long seed = 1; seed <= 20; seed++) {
            InspectionForm task = correction(seed, Fill.EVERYTHING);
            Form form = task.form(AROUND);
            Json.Fields was = corrected(task, form, form);
            assertThat(was)
                    .as("a form that nobody touched changes nothing")
                    .isEqualTo(InspectionBody.write(task.go().wrong().content()));
            there.addAll(leaves(was).keySet());
            Fill fill = seed % 2 == 0 ? Fill.EVERYTHING : Fill.SOMETHING;
            for (Field field : correction(seed + 100, fill).form(AROUND).fields()) {
                Form filled = form.with(field.key(), field.input());
                if (task.refusal(new Filled(form, filled), AROUND).isEmpty()) {
                    changed.addAll(differences(was, corrected(task, form, filled)));
                }
            }
        }
        there.removeIf(path -> path.startsWith("photos") || path.equals("round"));

        assertThat(changed).containsAll(there);
    }

    private static InspectionForm correction(long seed, Fill fill) {
        RandomThings make = new RandomRecords(seed, fill).things();
        PartRecord part = PartRecord.of(make.part(SELF, PARENT, "V"), List.of());
        return new InspectionForm(new Go.CorrectInspection(part, entry(make.inspection(SELF)), List.of()));
    }

    private static Json.Fields corrected(InspectionForm task, Form first, Form last) {
        return InspectionBody.write(((Amend.CorrectInspection) task.ask(new Filled(first, last), AROUND)).right());
    }

    private static <T> Json.Fields known(Kind<T> kind, T record) {
        Json.Fields body = kind.write().apply(record);
        return body.values().containsKey("about")
                ? Json.fields().put("text", body.field("text").orElseThrow()).done()
                : body;
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <T> void everyFieldCanBeEntered(Kind<T> kind) {
        Set<String> entered = new TreeSet<>();
        Set<String> there = new TreeSet<>();
        for (long seed = 1; seed <= 20; seed++) {
            T record = full(kind, seed);
            FormTask task = kind.task().apply(Optional.empty());
            Form blank = task.form(AROUND);
            Form filled = blank;
            for (Field field :
                    kind.task().apply(Optional.of(record)).form(AROUND).fields()) {
                filled = filled.with(field.key(), field.input());
            }
            there.addAll(leaves(known(kind, record)).keySet());
            entered.addAll(leaves(kind.asked().apply(task.ask(new Filled(blank, filled), AROUND)))
                    .keySet());
        }
        there.removeAll(kind.elsewhere());

        assertThat(entered).containsAll(there);
    }
}
