package thalweg.sheet;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.PartRecord;
import thalweg.profile.ProfileWords;
import thalweg.route.Obstacle;
import thalweg.route.PartialDate;
import thalweg.text.Phrases;
import thalweg.units.Force;
import thalweg.units.Length;

/** Chooses the words of one sheet: phrases by key, quantities in its units, dates with their ages as of its day. */
final class Wording {

    private static final char NO_BREAK_SPACE = '\u00A0';

    private final Phrases phrases;
    private final SheetOptions options;
    private final Ages ages;

    Wording(Phrases phrases, SheetOptions options) {
        this.phrases = phrases;
        this.options = options;
        this.ages = new Ages(phrases, options.asOf());
    }

    SheetOptions options() {
        return options;
    }

    Phrases phrases() {
        return phrases;
    }

    Ages ages() {
        return ages;
    }

    ProfileWords profile() {
        return new ProfileWords(phrases, options.units());
    }

    String say(String key, Object... arguments) {
        return phrases.say(key, arguments);
    }

    String labelled(String name, String said) {
        return phrases.labelled(name, said);
    }

    Words words(String key, Object... arguments) {
        return Words.of(say(key, arguments));
    }

    Words toned(Tone tone, String key, Object... arguments) {
        return Words.of(say(key, arguments), tone);
    }

    /** The word for one value of a list, such as the kinds of obstacles. */
    String of(String list, Enum<?> value) {
        return say(list + "." + value.name().toLowerCase(Locale.ROOT));
    }

    Words caution(String key) {
        return Words.of(phrases.caution(key));
    }

    Words unknown() {
        return toned(Tone.UNKNOWN, "unknown");
    }

    Words noneEntered() {
        return toned(Tone.UNKNOWN, "sheet.none_entered");
    }

    /** The text, or that it is unknown. */
    Words orUnknown(Optional<String> text) {
        return text.filter(known -> !known.isBlank()).map(Words::of).orElseGet(this::unknown);
    }

    /** The text, or that it is unknown. */
    Words orUnknown(String text) {
        return orUnknown(Optional.of(text));
    }

    /** What the keeper noted about a thing for themselves, marked as such; nothing where that is not to be shown. */
    Optional<Fact> privateNote(Uid thing) {
        return Optional.ofNullable(options.privateNotes().get(thing))
                .filter(note -> !note.isBlank())
                .map(note -> fact("sheet.private.note", Words.of(note, Tone.CAUTION)));
    }

    /** The text, or else that phrase in the tone of what is unknown. */
    Words orElse(String text, String key) {
        return text.isBlank() ? toned(Tone.UNKNOWN, key) : Words.of(text);
    }

    /** Mark and word. */
    Words condition(Condition condition) {
        return Words.of(told(condition), Tone.of(condition));
    }

    /** Mark and word, said of the condition in which a part was left. */
    Words left(Condition condition) {
        return toned(Tone.of(condition), "sheet.visit.left", told(condition));
    }

    private String told(Condition condition) {
        return marked(of("condition.mark", condition), of("condition", condition));
    }

    /** Mark and word for what nobody has seen. */
    Words unseen(Collection<PartRecord> parts) {
        boolean sought = parts.stream().anyMatch(part -> part.state().entries() > 0);
        String word = say(sought ? "condition.not_seen" : "condition.unknown");
        return Words.of(marked(say("condition.mark.unknown"), word), Tone.UNKNOWN);
    }

    /** A mark at the end of one line and its word on the next would be read apart. */
    private static String marked(String mark, String word) {
        return mark + NO_BREAK_SPACE + word;
    }

    String length(Length length) {
        return unbroken(length.print(options.units()));
    }

    /** A number stays with its unit. */
    private static String unbroken(String quantity) {
        return quantity.replace(' ', NO_BREAK_SPACE);
    }

    Words length(Optional<Length> length) {
        return orUnknown(length.map(this::length));
    }

    /** To the hand-width, without a sign. */
    String handWidths(Length length) {
        return unbroken(new Length(Math.abs(length.metres())).printFine(options.units()));
    }

    String force(Force force) {
        return unbroken(force.print(options.units()));
    }

    Words force(Optional<Force> force) {
        return orUnknown(force.map(this::force));
    }

    Words ago(Optional<PartialDate> date, Words otherwise) {
        return date.map(known -> Words.of(ages.ago(known))).orElse(otherwise);
    }

    String by(String name) {
        if (!options.contents().names()) {
            return say("sheet.by.left_out");
        }
        return name.isBlank() ? say("sheet.by.unknown") : say("sheet.by", name);
    }

    String duration(int minutes) {
        return Durations.print(minutes, phrases);
    }

    /** How long the way out takes; that it is unknown is said in its tone. */
    Words wayOut(Obstacle escape) {
        return escape.wayOut()
                .map(minutes -> words("sheet.way_out", unbroken(duration(minutes))))
                .orElseGet(() -> toned(Tone.UNKNOWN, "sheet.way_out", say("unknown")));
    }

    /** A place to write in by hand. */
    Words blank() {
        return toned(Tone.QUIET, "sheet.blank");
    }

    Fact fact(String key, Words... lines) {
        return new Fact(say(key), List.of(lines));
    }

    Fact fact(String key, List<Words> lines) {
        return new Fact(say(key), lines);
    }
}
