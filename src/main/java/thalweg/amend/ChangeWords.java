package thalweg.amend;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.body.FactType;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.json.Json;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** What changes were, in words. */
public final class ChangeWords {

    /** More fields than these are counted, not named, where a change is told in one line. */
    private static final int FIELDS_NAMED = 3;

    /** A longer text is only named; what it says now stands elsewhere on the sheet [characters]. */
    private static final int SHORT = 60;

    private final Phrases phrases;
    private final FieldWords fields;

    /**
     * @param phrases the language
     * @param units of quantities
     */
    public ChangeWords(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.fields = new FieldWords(phrases, units);
    }

    /** A change in one line: "changed station Porte: rope needed". */
    public String line(ChangeView change) {
        if (change.deeds().size() >= change.size() && !change.isImport()) {
            return change.deeds().stream().map(this::line).collect(Collectors.joining("; "));
        }
        String tally = tally(change);
        if (change.isImport()) {
            return phrases.say("change.import", tally);
        }
        String first = change.deeds().stream().map(this::line).collect(Collectors.joining("; "));
        return phrases.say("change.many", tally, first);
    }

    /** "3 canyons, 57 other things, 412 entries". */
    private String tally(ChangeView change) {
        if (change.counts().size() == 1) {
            Map.Entry<String, Integer> only =
                    change.counts().entrySet().iterator().next();
            return counted(only.getKey(), only.getValue());
        }
        int canyons = change.count(ThingType.CANYON.word());
        int entries = change.counts().entrySet().stream()
                .filter(count -> ThingType.of(count.getKey()).isEmpty())
                .mapToInt(Map.Entry::getValue)
                .sum();
        int others = change.size() - canyons - entries;
        return Stream.of(
                        count("canyons", canyons),
                        count(canyons > 0 ? "other_things" : "things", others),
                        count("entries", entries))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private String counted(String type, int number) {
        String key = "change.count." + type;
        return phrases.has(key + ".other")
                ? phrases.count(key, number)
                : count(ThingType.of(type).isPresent() ? "things" : "entries", number);
    }

    private String count(String key, int number) {
        return number == 0 ? "" : phrases.count("change." + key, number);
    }

    /** One deed in one line. */
    public String line(Deed deed) {
        String what = subject(deed);
        String key = key(deed);
        String told = switch (deed.kind()) {
            case ENTERED, REORDERED, BROUGHT_BACK, RESTORED -> "";
            case ADDED -> found(deed.after());
            case CHANGED -> changed(deed);
            case MOVED ->
                deed.after()
                        .field(parentKey(deed))
                        .map(into -> fields.value(deed.type(), parentKey(deed), Optional.of(into)))
                        .filter(into -> !into.isEmpty())
                        .map(into -> phrases.say("deed.into", into))
                        .orElse("");
            case CORRECTED, WITHDRAWN, TAKEN_OUT -> deed.reason();
        };
        String done = phrases.say(key, what);
        return told.isEmpty() ? done : phrases.say("deed.told", done, told);
    }

    /** One deed in one line with what a field said before and says now, field by field, where that is short. */
    String inFull(Deed deed) {
        List<String> told = deed.differences().stream()
                .filter(one -> deed.kind() == Deed.Kind.CHANGED || deed.kind() == Deed.Kind.CORRECTED)
                .map(one -> difference(deed, one))
                .toList();
        return told.isEmpty()
                ? line(deed)
                : phrases.say("deed.told", phrases.say(key(deed), subject(deed)), String.join("; ", told));
    }

    private String difference(Deed deed, Deed.Difference one) {
        String name = fields.name(one.key());
        String before = fields.value(deed.type(), one.key(), one.before());
        String after = fields.value(deed.type(), one.key(), one.after());
        return before.length() > SHORT || after.length() > SHORT
                ? name
                : phrases.say("field.becomes", name, before, after);
    }

    private static String key(Deed deed) {
        return "deed." + deed.kind().name().toLowerCase(Locale.ROOT);
    }

    private static String parentKey(Deed deed) {
        return ThingType.of(deed.type()).map(ThingType::parentKey).orElse("");
    }

    /** What an entry found or says, as far as one line has room for it. */
    private String found(Json.Fields entry) {
        if (entry.field("not_seen").isPresent()) {
            return phrases.say("condition.not_seen");
        }
        Optional<Json> condition = entry.field("left").or(() -> entry.field("found"));
        return condition
                .map(word -> fields.value("", "found", Optional.of(word)))
                .orElse("");
    }

    private String changed(Deed deed) {
        List<Deed.Difference> differences = deed.differences();
        String named = differences.stream()
                .limit(FIELDS_NAMED)
                .map(one -> fields.name(one.key()))
                .collect(Collectors.joining(", "));
        int more = differences.size() - FIELDS_NAMED;
        return more > 0 ? phrases.say("deed.more_fields", named, more) : named;
    }

    /** "part left bolt (Porte)", "inspection of left bolt (Porte)". */
    private String subject(Deed deed) {
        Deed.Subject subject = deed.subject();
        String thing = name(subject);
        String at = subject.station().isEmpty() ? thing : phrases.say("deed.at", thing, subject.station());
        Optional<FactType> entry = FactType.of(deed.type());
        String on = deed.after().text("on");
        String day = on.isEmpty() ? deed.before().map(body -> body.text("on")).orElse("") : on;
        return entry.map(type -> phrases.say("deed.entry." + type.word(), at, day))
                .orElse(at);
    }

    /** "part left bolt". */
    public String name(ThingBody thing) {
        return name(new Deed.Subject(thing.type().word(), thing.body(), ""));
    }

    private String name(Deed.Subject subject) {
        String type = subject.type().isEmpty()
                ? phrases.say("unknown")
                : phrases.has("thing." + subject.type())
                        ? phrases.say("thing." + subject.type())
                        : subject.type().replace('_', ' ');
        String label = Deed.label(subject.body());
        if (!label.isEmpty()) {
            return phrases.say("deed.named", type, label);
        }
        String key = subject.body().field("kind").isPresent() ? "kind" : "role";
        return subject.body()
                .field(key)
                .map(word -> fields.value(subject.type(), key, Optional.of(word)))
                .map(word -> phrases.say("deed.named", type, word))
                .orElse(type);
    }

    /** What a field of a thing is called. */
    public String fieldName(String key) {
        return fields.name(key);
    }

    /** A deed field by field, before and after; empty where there is nothing more to say than its line says. */
    public List<String> details(Deed deed) {
        List<String> lines = new ArrayList<>();
        for (Deed.Difference one : deed.differences()) {
            String name = fields.name(one.key());
            if (one.key().equals("order")) {
                if (deed.before().isPresent()) {
                    lines.add(phrases.say("field.changed_place"));
                }
            } else if (deed.before().isEmpty()) {
                lines.add(phrases.say("field.is", name, fields.value(deed.type(), one.key(), one.after())));
            } else {
                lines.add(phrases.say(
                        "field.becomes",
                        name,
                        fields.value(deed.type(), one.key(), one.before()),
                        fields.value(deed.type(), one.key(), one.after())));
            }
        }
        return lines;
    }
}
