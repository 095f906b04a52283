package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import thalweg.rig.CheckLetter;
import thalweg.rig.LaidOut;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigComparison;
import thalweg.rig.RigQuestion;
import thalweg.text.Phrases;
import thalweg.units.Force;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** Layouts side by side, in words, the same on the screen and in the terminal. */
public final class ComparisonWords {

    private final Phrases phrases;
    private final UnitSystem units;

    /**
     * Words in a language and a system of units.
     */
    public ComparisonWords(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** What matters most, as it was said. */
    public String priority(RigComparison comparison) {
        return phrases.say("compare.priority." + comparison.priority().name().toLowerCase(Locale.ROOT));
    }

    /** A heading and a row a layout: its name, a verdict a letter, what the weakest point has to spare, the drop. */
    public List<List<String>> table(RigComparison comparison) {
        List<CheckLetter> letters = letters(comparison.layouts());
        List<List<String>> rows = new ArrayList<>();
        rows.add(heading(letters, CheckLetter::name));
        comparison.layouts().stream()
                .filter(layout -> layout.answer().isPresent())
                .forEach(layout -> rows.add(row(layout, letters)));
        return rows;
    }

    /** What the columns of the table hold, each letter with the word that it stands for. */
    public List<String> labels(RigComparison comparison) {
        return heading(letters(comparison.layouts()), this::lettered);
    }

    private List<String> heading(List<CheckLetter> letters, Function<CheckLetter, String> named) {
        List<String> heading = new ArrayList<>();
        heading.add(phrases.say("compare.layout"));
        letters.forEach(letter -> heading.add(named.apply(letter)));
        heading.add(phrases.say("compare.ratio"));
        heading.add(phrases.say("compare.pull"));
        heading.add(phrases.say("compare.drop"));
        return heading;
    }

    /** What each letter stands for, in one line. */
    public String letters(RigComparison comparison) {
        return letters(comparison.layouts()).stream().map(this::lettered).collect(Collectors.joining(", ")) + ".";
    }

    private String lettered(CheckLetter letter) {
        return letter.name() + " " + phrases.say(letter.called());
    }

    private List<String> row(LaidOut layout, List<CheckLetter> letters) {
        List<String> row = new ArrayList<>();
        row.add(name(layout));
        letters.forEach(letter -> row.add(layout.verdict(letter)
                .map(verdict -> phrases.say("rig.verdict." + verdict.word()))
                .orElse("")));
        OptionalDouble ratio = layout.leastRatio();
        row.add(
                ratio.isPresent()
                        ? phrases.say("compare.times", floored(ratio.getAsDouble()))
                        : phrases.say("unknown"));
        row.add(Force.kilonewtons(layout.hardestPull()).print(units));
        row.add(
                Double.isFinite(layout.farthestDrop())
                        ? new Length(layout.farthestDrop()).printFine(units)
                        : phrases.say("compare.all_lost"));
        return row;
    }

    private String name(LaidOut layout) {
        String kind = phrases.say("compare.kind." + layout.kind().word());
        return layout.focusMoved() ? phrases.say("compare.moved", kind) : kind;
    }

    /** Never rounded up: it is what is left of a strength. */
    private static String floored(double ratio) {
        return String.format(Locale.ROOT, "%.1f", Math.floor(ratio * 10) / 10);
    }

    private static List<CheckLetter> letters(List<LaidOut> layouts) {
        return layouts.stream()
                .flatMap(layout -> layout.answer().stream())
                .findFirst()
                .map(RigAnswer::checks)
                .orElse(List.of())
                .stream()
                .map(check -> check.letter())
                .toList();
    }

    /** A question with its answer and what that rests on. */
    public String question(RigQuestion question) {
        String answer = question.answer()
                .map(yes -> phrases.say(yes ? "compare.yes" : "compare.no"))
                .orElse(phrases.say("compare.cannot_tell"));
        return phrases.say("compare.question", question.asked(), answer, question.saying());
    }

    /** What the figures speak for. */
    public String says(RigComparison comparison) {
        return phrases.say(comparison.recommendation().saying());
    }

    /** What that rests on, a line each. */
    public List<String> grounds(RigComparison comparison) {
        return comparison.recommendation().restsOn().stream().map(phrases::say).toList();
    }

    /** What would change it, a line each. */
    public List<String> otherwise(RigComparison comparison) {
        return comparison.recommendation().wouldChange().stream()
                .map(phrases::say)
                .toList();
    }

    /** What stands below every comparison. */
    public String caution() {
        return phrases.caution("compare.caution");
    }

    /** Above what the recommendation rests on. */
    public String restsOn() {
        return phrases.say("compare.rests_on");
    }

    /** Above what would change it. */
    public String wouldChange() {
        return phrases.say("compare.would_change");
    }
}
