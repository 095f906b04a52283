package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import thalweg.body.ThingBody;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.ledger.Uid;
import thalweg.place.Position;
import thalweg.place.PositionText;
import thalweg.route.AmericanGrade;
import thalweg.route.Canyon;
import thalweg.route.CanyonText;
import thalweg.route.FrenchGrade;
import thalweg.route.Prose;
import thalweg.route.Times;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * A canyon to enter or edit.
 *
 * @param uid its name in every database
 * @param before the canyon as it is; empty for a new one
 */
record CanyonForm(Uid uid, Optional<Canyon> before) implements FormTask {

    private static final String INVENTED = "invented";

    private static final Canyon BLANK_FIELDS = new Canyon(
            new Uid(new UUID(0, 0)),
            "?",
            List.of(),
            "",
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Times.UNKNOWN,
            Optional.empty(),
            Prose.none(),
            false);

    @Override
    public String title(Surroundings around) {
        return before.map(canyon -> around.say("form.canyon.edit", canyon.name()))
                .orElseGet(() -> around.say("form.canyon.new"));
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(
                before.isPresent()
                        ? DraftKey.of(DraftKind.CANYON, uid)
                        : new DraftKey(DraftKind.CANYON, true, Optional.empty()));
    }

    @Override
    public Form form(Surroundings around) {
        Canyon canyon = before.orElse(BLANK_FIELDS);
        return Form.of(new Build(around)
                .name("name", "form.canyon.name", before.map(Canyon::name).orElse(""))
                .text("others", "form.canyon.others", String.join(", ", canyon.otherNames()))
                .text("region", "form.canyon.region", canyon.region())
                .text("country", "form.canyon.country", canyon.country())
                .value(
                        "french",
                        "form.canyon.french",
                        shown(canyon.french().map(FrenchGrade::print)),
                        FrenchGrade::parse)
                .value(
                        "american",
                        "form.canyon.american",
                        shown(canyon.american().map(AmericanGrade::print)),
                        AmericanGrade::parse)
                .value(
                        "position",
                        "form.canyon.position",
                        shown(canyon.position().map(Position::print)),
                        PositionText::parse)
                .value(
                        "drop",
                        "form.canyon.drop",
                        shown(canyon.longestDrop().map(drop -> drop.print(around.units()))),
                        Quantities::height)
                .value(
                        "approach_min",
                        "form.canyon.approach",
                        minutes(canyon.times().approachMinutes()),
                        Quantities::minutes)
                .value(
                        "descent_min",
                        "form.canyon.descent",
                        minutes(canyon.times().descentMinutes()),
                        Quantities::minutes)
                .value("exit_min", "form.canyon.exit", minutes(canyon.times().exitMinutes()), Quantities::minutes)
                .prose("canyon_text", CanyonText.class, canyon.prose())
                .options(
                        "invented",
                        around.say("form.canyon.invented"),
                        List.of("", INVENTED),
                        List.of(around.say("form.canyon.invented.no"), around.say("form.canyon.invented.yes")),
                        canyon.invented() ? INVENTED : "")
                .done());
    }

    private static String shown(Optional<String> value) {
        return value.orElse("");
    }

    private static String minutes(Optional<Integer> minutes) {
        return shown(minutes.map(known -> Integer.toString(known)));
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        Optional<Times> times = before.map(Canyon::times);
        Canyon after = new Canyon(
                uid,
                filled.text("name"),
                filled.names("others"),
                filled.text("region"),
                filled.text("country"),
                filled.value("french", before.flatMap(Canyon::french), FrenchGrade::parse),
                filled.value("american", before.flatMap(Canyon::american), AmericanGrade::parse),
                filled.value("position", before.flatMap(Canyon::position), PositionText::parse),
                new Times(
                        filled.value("approach_min", times.flatMap(Times::approachMinutes), Quantities::minutes),
                        filled.value("descent_min", times.flatMap(Times::descentMinutes), Quantities::minutes),
                        filled.value("exit_min", times.flatMap(Times::exitMinutes), Quantities::minutes)),
                filled.value("drop", before.flatMap(Canyon::longestDrop), Quantities::height),
                filled.prose(CanyonText.class),
                filled.text("invented").equals(INVENTED));
        return Save.of(before.map(ThingBody::of), ThingBody.of(after));
    }
}
