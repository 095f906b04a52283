package thalweg.due;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.PartState;
import thalweg.route.Exposure;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;
import thalweg.service.LoadPhrases;
import thalweg.settings.DueFigure;
import thalweg.settings.Settings;
import thalweg.text.Phrases;

/**
 * When parts are due. That personal equipment is examined at least every 12 months is common practice after EN 365, and 36
 * months is how long the WSTDA's outdoor exposure test of 1997 to 2004 went; the other figures are our own.
 */
class DueRulesTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
    private static final Uid ID = Uid.minted(1, new UUID(1, 1));
    private static final Phrases ENGLISH = LoadPhrases.english();
    private static final DueRules RULES = new DueRules(Settings.standard(ENGLISH), TODAY);

    private static Part part(PartKind kind, @Nullable String placed) {
        return new Part(
                ID,
                ID,
                "V",
                "it",
                kind,
                Part.Hardware.UNKNOWN,
                date(placed),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    private static Optional<PartialDate> date(@Nullable String text) {
        return Optional.ofNullable(text).map(PartialDate::parse);
    }

    /** "worn 2026-01-01", "worn 2026 disagree"; nothing is never seen. */
    private static PartState state(@Nullable String text) {
        if (text == null) {
            return PartState.NEVER_INSPECTED;
        }
        String[] words = text.split(" ", -1);
        return new PartState(
                Optional.of(Condition.valueOf(words[0].toUpperCase(Locale.ROOT))),
                date(words[1]),
                words.length > 2,
                Optional.empty(),
                1);
    }

    private static Optional<Exposure> exposure(@Nullable String word) {
        return Arrays.stream(Exposure.values())
                .filter(one -> one.name().equalsIgnoreCase(word))
                .findFirst();
    }

    private static String print(List<Due> dues) {
        return dues.stream()
                .map(due -> due.reason() + due.day().map(day -> " " + day).orElse(""))
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            BOLT    |            | sound 2026-01-10           |        | USUAL 2027-01-10
            BOLT    |            | sound 2026-01              |        | USUAL 2027-01-01
            BOLT    |            | sound 2026-01-10           | dry    | USUAL 2027-01-10
            BOLT    |            | sound 2026-01-10           | wet    | WET 2026-10-10
            BOLT    |            | sound 2026-01-10           | marine | MARINE 2026-07-10
            BOLT    |            | worn 2026-01-10            |        | WORN 2026-07-10
            BOLT    |            | worn 2026-01-10            | marine | WORN 2026-07-10
            BOLT    |            | doubtful 2026-01-31        | marine | DOUBTFUL 2026-02-28
            BOLT    |            | sound 2026-01-10 disagree  |        | DISAGREE 2026-02-10
            BOLT    |            | unsafe 2026-01-10          |        | UNSAFE 2026-01-10; DOUBTFUL 2026-02-10
            BOLT    | 2010       | gone 2026-01-10            | wet    | GONE 2026-01-10
            BOLT    |            |                            | marine | NEVER_SEEN
            WEBBING | 2024-03-05 | sound 2026-01-10           |        | USUAL 2027-01-10; TEXTILE 2027-03-05
            WEBBING | 2022       | sound 2026-01-10           |        | TEXTILE 2025-01-01; USUAL 2027-01-10
            SLING   |            | sound 2026-01-10           |        | USUAL 2027-01-10; AGE_UNKNOWN
            ROPE    | 2024-03-05 |                            |        | NEVER_SEEN; TEXTILE 2027-03-05
            CHAIN   | 2001       | sound 2026-01-10           |        | USUAL 2027-01-10
            TREE    |            | worn 2026-01-10            |        | WORN 2026-07-10
            """)
    void aPartIsDueByTheReasonThatAsksSoonest(
            PartKind kind, @Nullable String placed, @Nullable String state, @Nullable String exposure, String dues) {
        assertThat(print(RULES.of(part(kind, placed), state(state), Optional.empty(), exposure(exposure))))
                .isEqualTo(dues);
    }

    @Test
    void textileThatWasReplacedCountsFromThen() {
        assertThat(print(RULES.of(
                        part(PartKind.CORD, "2015"), state("sound 2026-05-01"), date("2025-08"), Optional.empty())))
                .isEqualTo("USUAL 2027-05-01; TEXTILE 2028-08-01");
    }

    @Test
    void theFiguresCanBeSet() {
        Settings set = Settings.standard(ENGLISH)
                .withDue(Map.of(DueFigure.EXAMINED, 24, DueFigure.WORN, 30, DueFigure.TEXTILE, 6));
        DueRules rules = new DueRules(set, TODAY);

        assertThat(print(rules.of(
                        part(PartKind.CORD, "2026-05-01"),
                        state("worn 2026-01-10"),
                        Optional.empty(),
                        Optional.empty())))
                .isEqualTo("TEXTILE 2026-11-01; USUAL 2028-01-10");
    }

    /** A worse finding, a harsher place or an older date never puts off what is to be done. */
    @Test
    void nothingThatIsWorseIsDueLater() {
        List<PartState> states = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            states.add(state(condition.name() + " 2026-01-10"));
        }
        for (PartKind kind : PartKind.values()) {
            for (int i = 0; i + 1 < states.size(); i++) {
                for (String exposure : List.of("dry", "wet", "marine")) {
                    Due better = first(kind, states.get(i), exposure);
                    assertThat(Due.BY_URGENCY.compare(first(kind, states.get(i + 1), exposure), better))
                            .isLessThanOrEqualTo(0);
                    assertThat(Due.BY_URGENCY.compare(
                                    first(kind, states.get(i), "marine"), first(kind, states.get(i), "wet")))
                            .isLessThanOrEqualTo(0);
                }
            }
        }
    }

    private static Due first(PartKind kind, PartState state, String exposure) {
        return RULES.of(part(kind, "2026-02-01"), state, Optional.empty(), exposure(exposure))
                .get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "sound 2026-01-10, , STANDS",
        "sound 2025-06-01, , STANDS",
        "sound 2025-05-31, , OLD",
        "sound 2024-06-01, , OLD",
        "sound 2024-05-31, , SAYS_LITTLE",
        "worn 2025-12-01, , STANDS",
        "worn 2025-11-30, , OLD",
        "sound 2025-12-02, marine, STANDS",
        "sound 2025-05-31, marine, SAYS_LITTLE",
        "sound 2026-05-20 disagree, , OLD",
        ", , NONE"
    })
    void whatWasSeenFades(@Nullable String state, @Nullable String exposure, Confidence confidence) {
        assertThat(RULES.confidence(state(state), exposure(exposure))).isEqualTo(confidence);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            worn 2025-01-01     | examine: due for 11 months
            worn 2025-11-15     | examine: due for 17 days
            sound 2022-01-01    | examine: due for 3 years
            sound 2025-06-01    | examine: due today
            sound 2025-06-02    | examine: due in 1 day
            sound 2026-01-10    | examine: due in 7 months
            unsafe 2026-01-10   | mend before use: unsafe
            gone 2026           | mend before use: gone
                                | examine: never inspected
            """)
    void itIsSaidInWords(@Nullable String state, String words) {
        Due due = RULES.of(part(PartKind.BOLT, null), state(state), Optional.empty(), Optional.empty())
                .get(0);

        assertThat(DueWords.what(due, TODAY, ENGLISH)).isEqualTo(words);
        assertThat(DueWords.why(due, ENGLISH)).isNotBlank();
    }

    @Test
    void everyReasonSaysWhyAndWhereTheFigureIsFrom() {
        Due usual = new Due(DueReason.USUAL, Optional.of(TODAY), 12);
        Due worn = new Due(DueReason.WORN, Optional.of(TODAY), 6);

        assertThat(DueWords.why(usual, ENGLISH))
                .isEqualTo("A look at least every 12 months, as is common practice after EN 365.");
        assertThat(DueWords.why(worn, ENGLISH)).contains("every 6 months, our choice");
        for (DueReason reason : DueReason.values()) {
            boolean undated = reason == DueReason.NEVER_SEEN || reason == DueReason.AGE_UNKNOWN;
            Due due = new Due(reason, undated ? Optional.empty() : Optional.of(TODAY), 1);
            assertThat(DueWords.what(due, TODAY, ENGLISH)).contains(": ");
            assertThat(DueWords.why(due, ENGLISH)).endsWith(".");
        }
        for (Confidence confidence : Confidence.values()) {
            assertThat(DueWords.confidence(confidence, ENGLISH)).isNotBlank();
        }
    }

    @Test
    void whatNobodyKnowsIsNeverCalledDue() {
        Due unknown = new Due(DueReason.AGE_UNKNOWN, Optional.empty(), 36);
        Due never = new Due(DueReason.NEVER_SEEN, Optional.empty(), 0);

        assertThat(unknown.isDueWithin(TODAY, 10_000)).isFalse();
        assertThat(unknown.daysOver(TODAY)).isEmpty();
        assertThat(never.isDue(TODAY)).isTrue();
        assertThat(new Due(DueReason.USUAL, Optional.of(TODAY.plusDays(3)), 12).isDueWithin(TODAY, 3))
                .isTrue();
        assertThat(new Due(DueReason.USUAL, Optional.of(TODAY.plusDays(3)), 12).isDueWithin(TODAY, 2))
                .isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> new Due(DueReason.USUAL, Optional.empty(), 12));
        assertThatIllegalArgumentException().isThrownBy(() -> new Due(DueReason.NEVER_SEEN, Optional.of(TODAY), 0));
    }
}
