package thalweg.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonMeasure;
import thalweg.logbook.Finding;
import thalweg.logbook.Span;

/**
 * What is looked for among canyons, as conditions over the rows of {@link Shown#CANYONS}.
 *
 * <p>Of everything that is asked there are two conditions: that it surely holds, and that it may hold. Canyons for which
 * all may hold are read; a number says of each what does not surely hold.
 */
final class CanyonConditions {

    /** The bit that stands for region or country; those of the measures follow in their order. */
    static final int WHERE_BIT = 0;

    private static final String IN_WORDS = "c.key in (select rowid from canyon_words where canyon_words match ?)";

    private record Term(String sql, List<@Nullable Object> values) {

        static Term of(String sql, Object... values) {
            return new Term(sql, List.of(values));
        }
    }

    private final List<Term> may = new ArrayList<>();
    private final List<Term> doubts = new ArrayList<>();

    private CanyonConditions() {}

    static CanyonConditions of(Finding finding) {
        CanyonConditions conditions = new CanyonConditions();
        new Match().words(finding.words()).question().ifPresent(words -> conditions.may.add(Term.of(IN_WORDS, words)));
        conditions.filter(finding.filter());
        return conditions;
    }

    private void filter(CanyonFilter filter) {
        where("region", filter.region());
        where("country", filter.country());
        for (CanyonMeasure measure : CanyonMeasure.values()) {
            span(measure, filter.of(measure));
        }
        if (filter.neverSeen()) {
            may.add(Term.of("t.never_seen > 0"));
        }
    }

    private void where(String column, String words) {
        Optional<String> question = new Match().words(column, words).question();
        if (question.isPresent()) {
            may.add(Term.of("(c." + column + " = '' or " + IN_WORDS + ")", question.get()));
            doubts.add(Term.of("((c." + column + " = '') << " + WHERE_BIT + ")"));
        }
    }

    private void span(CanyonMeasure measure, Span wanted) {
        if (wanted.isAny()) {
            return;
        }
        String least = Measures.least(measure);
        String most = Measures.most(measure);
        may.addAll(bounds(most, wanted.from(), least, wanted.to()));
        List<Term> surely = bounds(least, wanted.from(), most, wanted.to());
        doubts.add(new Term("((not (" + joined(" and ", surely) + ")) << " + bit(measure) + ")", values(surely)));
    }

    private static List<Term> bounds(String notBelow, OptionalLong from, String notAbove, OptionalLong to) {
        List<Term> bounds = new ArrayList<>();
        from.ifPresent(number -> bounds.add(Term.of(notBelow + " >= ?", number)));
        to.ifPresent(number -> bounds.add(Term.of(notAbove + " <= ?", number)));
        return bounds;
    }

    // The bit lives for one query and is never stored.
    @SuppressWarnings("EnumOrdinal")
    static int bit(CanyonMeasure measure) {
        return 1 + measure.ordinal();
    }

    /** Whether nothing is asked. */
    boolean isNone() {
        return may.isEmpty();
    }

    /** Whether all that is asked may hold. */
    String mayHold() {
        return may.isEmpty() ? "true" : joined(" and ", may);
    }

    /** The values of the condition, in order. */
    List<@Nullable Object> mayHoldValues() {
        return values(may);
    }

    /** A number with a bit for everything that is asked and does not surely hold, where it may; 0 where all does. */
    String doubt() {
        return doubts.isEmpty() ? "0" : joined(" | ", doubts);
    }

    /** The values of the number, in order. */
    List<@Nullable Object> doubtValues() {
        return values(doubts);
    }

    private static String joined(String operator, List<Term> terms) {
        return terms.stream().map(Term::sql).collect(Collectors.joining(operator));
    }

    private static List<@Nullable Object> values(List<Term> terms) {
        List<@Nullable Object> values = new ArrayList<>();
        terms.forEach(term -> values.addAll(term.values()));
        return values;
    }
}
