package thalweg.body;

import java.util.Optional;
import java.util.function.Function;
import thalweg.fault.InputException;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.place.Position;
import thalweg.route.AmericanGrade;
import thalweg.route.Canyon;
import thalweg.route.CanyonText;
import thalweg.route.FrenchGrade;
import thalweg.route.Times;

/** A canyon as a body. */
public final class CanyonBody {

    private CanyonBody() {}

    /** Its fields, what is unknown left out. */
    public static Json.Fields write(Canyon canyon) {
        Json.Fields fields = Json.fields()
                .put("name", canyon.name())
                .put("other_names", canyon.otherNames())
                .put("region", canyon.region())
                .put("country", canyon.country())
                .putIfTrue("invented", canyon.invented())
                .putKnown("french_grade", canyon.french().map(grade -> Json.of(grade.print())))
                .putKnown("american_grade", canyon.american().map(grade -> Json.of(grade.print())))
                .putKnown(PositionBody.KEY, PositionBody.written(canyon.position()))
                .putKnown("approach_min", Fields.whole(canyon.times().approachMinutes()))
                .putKnown("descent_min", Fields.whole(canyon.times().descentMinutes()))
                .putKnown("exit_min", Fields.whole(canyon.times().exitMinutes()))
                .putKnown("longest_drop_cm", Fields.centimetres(canyon.longestDrop()))
                .done();
        return Fields.withProse(fields, canyon.prose());
    }

    /** The canyon; empty where a rule was broken, which is then among the findings. */
    public static Optional<Canyon> read(Uid uid, FieldReader in) {
        String name = in.text("name", Limits.NAME);
        var otherNames = in.texts("other_names", Limits.NAME);
        String region = in.textOrEmpty("region", Limits.NAME);
        String country = in.textOrEmpty("country", Limits.NAME);
        boolean invented = in.flag("invented").orElse(false);
        Optional<FrenchGrade> french = grade(in, "french_grade", FrenchGrade::parse);
        Optional<AmericanGrade> american = grade(in, "american_grade", AmericanGrade::parse);
        Optional<Position> position = PositionBody.read(in);
        Times times = new Times(minutes(in, "approach_min"), minutes(in, "descent_min"), minutes(in, "exit_min"));
        var longestDrop = Fields.centimetres(in, "longest_drop_cm", 0, Limits.HEIGHT_CM);
        var prose = Fields.prose(in, CanyonText.class);
        return in.sound()
                ? Optional.of(new Canyon(
                        uid,
                        name,
                        otherNames,
                        region,
                        country,
                        french,
                        american,
                        position,
                        times,
                        longestDrop,
                        prose,
                        invented))
                : Optional.empty();
    }

    private static Optional<Integer> minutes(FieldReader in, String key) {
        return Fields.whole(in, key, 1, Times.MOST_MINUTES);
    }

    private static <G> Optional<G> grade(FieldReader in, String key, Function<String, G> parse) {
        return in.optionalText(key, 20).flatMap(text -> {
            try {
                return Optional.of(parse.apply(text));
            } catch (InputException e) {
                in.refuse(key, e.saying());
                return Optional.empty();
            }
        });
    }
}
