package thalweg.amend;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thalweg.body.FactType;
import thalweg.body.ThingType;
import thalweg.json.Json;
import thalweg.logbook.Condition;
import thalweg.route.ObstacleKind;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** What became of a canyon's records, in words, what matters most on the way first. */
public final class SinceWords {

    /** A mark at the end of one line and its word on the next would be read apart. */
    private static final char NO_BREAK_SPACE = '\u00A0';

    private final Phrases phrases;
    private final ChangeWords words;

    private SinceWords(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.words = new ChangeWords(phrases, units);
    }

    /** What a line is about, in the order in which they are told. */
    public enum Kind {
        HAZARDS,
        CONDITIONS,
        ANCHORS,
        STATIONS,
        INSPECTIONS,
        NOTES,
        ANALYSES,
        CANYON
    }

    /**
     * Something that is not as it was.
     *
     * @param text one line
     * @param condition that a part has now, where that is what the line says
     */
    public record Line(String text, Optional<Condition> condition) {}

    /**
     * The lines of each kind of which there are any.
     *
     * @param inspections whether those are told one by one
     */
    public static Map<Kind, List<Line>> of(Since since, boolean inspections, Phrases phrases, UnitSystem units) {
        SinceWords telling = new SinceWords(phrases, units);
        Map<Kind, List<Line>> lines = new EnumMap<>(Kind.class);
        since.conditions()
                .forEach(change -> lines.computeIfAbsent(Kind.CONDITIONS, kind -> new ArrayList<>())
                        .add(telling.condition(change)));
        since.deeds().stream()
                .filter(deed -> inspections || kind(deed) != Kind.INSPECTIONS)
                .forEach(deed -> lines.computeIfAbsent(kind(deed), kind -> new ArrayList<>())
                        .add(new Line(telling.words.inFull(deed), Optional.empty())));
        return lines;
    }

    private Line condition(Since.ConditionChange change) {
        String part = phrases.say("deed.at", words.name(change.part()), change.station());
        return new Line(
                phrases.say("since.condition", part, told(change.before()), told(change.after())), change.after());
    }

    private String told(Optional<Condition> condition) {
        String word = condition.map(SinceWords::word).orElse("unknown");
        return phrases.say("condition.mark." + word) + NO_BREAK_SPACE + phrases.say("condition." + word);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static Kind kind(Deed deed) {
        Optional<FactType> fact = FactType.of(deed.type());
        if (fact.isPresent()) {
            return switch (fact.get()) {
                case INSPECTION, ROUND -> Kind.INSPECTIONS;
                case RIGGING_NOTE -> Kind.NOTES;
                case RIG_ANALYSIS -> Kind.ANALYSES;
                case SHEET_GIVEN -> Kind.CANYON;
            };
        }
        return switch (ThingType.of(deed.type()).orElse(ThingType.CANYON)) {
            case ANCHOR, PART -> Kind.ANCHORS;
            case STATION -> Kind.STATIONS;
            case OBSTACLE -> isHazard(deed) ? Kind.HAZARDS : Kind.STATIONS;
            case CANYON, TRIP, PRIVATE_NOTE -> Kind.CANYON;
        };
    }

    /** One that was there before counts too. */
    private static boolean isHazard(Deed deed) {
        return isHazard(deed.after())
                || deed.before().filter(SinceWords::isHazard).isPresent();
    }

    private static boolean isHazard(Json.Fields body) {
        return body.text("kind").equals(word(ObstacleKind.HAZARD));
    }
}
