package thalweg.storage;

import java.sql.SQLException;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.logbook.CanyonMeasure;
import thalweg.route.AmericanGrade;
import thalweg.route.Canyon;
import thalweg.route.FrenchGrade;
import thalweg.route.Times;

/** The measures of canyons as columns: how they are kept, and between which two numbers each surely is. */
final class Measures {

    /** More than any measure. */
    private static final long NO_END = 1_000_000_000;

    private Measures() {}

    /** Keeps what a canyon states of itself. */
    static void keep(Sql sql, Canyon canyon) throws SQLException {
        Optional<FrenchGrade> french = canyon.french();
        Optional<AmericanGrade> american = canyon.american();
        Times times = canyon.times();
        sql.run(
                KEEP,
                canyon.region(),
                canyon.country(),
                french.map(FrenchGrade::vertical).orElse(null),
                french.map(FrenchGrade::aquatic).orElse(null),
                french.flatMap(FrenchGrade::commitment).orElse(null),
                american.map(AmericanGrade::technical).orElse(null),
                american.map(grade -> leastWater(grade.water())).orElse(null),
                american.map(grade -> mostWater(grade.water())).orElse(null),
                american.flatMap(AmericanGrade::time).orElse(null),
                american.map(grade -> grade.risk().map(Measures::severity).orElse(0))
                        .orElse(null),
                minutes(times).mapToInt(Integer::intValue).sum(),
                minutes(times).count() == 3
                        ? minutes(times).mapToInt(Integer::intValue).sum()
                        : null,
                canyon.uid().bytes());
    }

    private static Stream<Integer> minutes(Times times) {
        return Stream.of(times.approachMinutes(), times.descentMinutes(), times.exitMinutes())
                .flatMap(Optional::stream);
    }

    private static int leastWater(AmericanGrade.Water water) {
        return switch (water) {
            case A -> 0;
            case B -> 1;
            case C, C1 -> 2;
            case C2 -> 3;
            case C3 -> 4;
            case C4 -> 5;
        };
    }

    private static int severity(AmericanGrade.Risk risk) {
        return switch (risk) {
            case R -> 1;
            case X -> 2;
        };
    }

    /** C alone says that there is a current and nothing of its strength. */
    private static int mostWater(AmericanGrade.Water water) {
        return water == AmericanGrade.Water.C ? leastWater(AmericanGrade.Water.C4) : leastWater(water);
    }

    /** What the measure surely reaches, over the rows of {@link Shown#CANYONS}. */
    static String least(CanyonMeasure measure) {
        return switch (measure) {
            case WATER -> orNone("c.american_water_from");
            case LONGEST_DROP -> "t.drop_from_cm";
            case MINUTES -> "c.minutes_from";
            case WORST -> orNone("iif(t.gone > 0, 4, t.worst)");
            case VERTICAL, AQUATIC, COMMITMENT, TECHNICAL, TIME_GRADE, RISK -> orNone(level(measure));
        };
    }

    /** What the measure surely does not pass. A part that nobody has seen may be in any condition. */
    static String most(CanyonMeasure measure) {
        return switch (measure) {
            case WATER -> orNoEnd("c.american_water_to");
            case LONGEST_DROP -> orNoEnd("t.drop_to_cm");
            case MINUTES -> orNoEnd("c.minutes_to");
            case WORST -> orNoEnd("iif(t.never_seen = 0, iif(t.gone > 0, 4, t.worst), null)");
            case VERTICAL, AQUATIC, COMMITMENT, TECHNICAL, TIME_GRADE, RISK -> orNoEnd(level(measure));
        };
    }

    private static String level(CanyonMeasure measure) {
        return switch (measure) {
            case VERTICAL -> "c.french_vertical";
            case AQUATIC -> "c.french_aquatic";
            case COMMITMENT -> "c.french_commitment";
            case TECHNICAL -> "c.american_class";
            case TIME_GRADE -> "c.american_time";
            case RISK -> "c.american_risk";
            case WATER, LONGEST_DROP, MINUTES, WORST -> throw new AssertionError(measure + " is no single level");
        };
    }

    private static String orNone(String column) {
        return "coalesce(" + column + ", 0)";
    }

    private static String orNoEnd(String column) {
        return "coalesce(" + column + ", " + NO_END + ")";
    }

    private static final String KEEP = """
            update canyon
               set region = ?, country = ?, french_vertical = ?, french_aquatic = ?, french_commitment = ?,
                   american_class = ?, american_water_from = ?, american_water_to = ?, american_time = ?,
                   american_risk = ?, minutes_from = ?, minutes_to = ?
             where uid = ?
            """;
}
