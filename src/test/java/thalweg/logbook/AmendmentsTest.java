package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import thalweg.ledger.Uid;

class AmendmentsTest {

    private static Uid uid(int number) {
        return new Uid(new UUID(0, number));
    }

    private static Withdrawal withdrawal(int number, Withdrawal... withdrawals) {
        return new Withdrawal(uid(number), "slip", "Ana", "now", List.of(withdrawals));
    }

    private static Entry<String> entry(int number, int corrects, Withdrawal... withdrawals) {
        return new Entry<>(
                uid(number),
                "entry " + number,
                "Ana",
                "now",
                corrects == 0 ? Optional.empty() : Optional.of(new Correction(uid(corrects), "slip")),
                List.of(withdrawals),
                false);
    }

    // The list only reads them.
    @SuppressWarnings("varargs")
    @SafeVarargs
    private static List<String> counting(Entry<String>... entries) {
        return Amendments.counting(Amendments.settle(List.of(entries)));
    }

    @Test
    void anEntryCountsUntilItIsCorrectedOrWithdrawn() {
        assertThat(counting(entry(1, 0), entry(2, 0))).containsExactly("entry 1", "entry 2");
        assertThat(counting(entry(1, 0), entry(2, 1))).containsExactly("entry 2");
        assertThat(counting(entry(1, 0, withdrawal(9)), entry(2, 0))).containsExactly("entry 2");
    }

    @Test
    void aWithdrawalThatIsTakenBackNoLongerCounts() {
        assertThat(counting(entry(1, 0, withdrawal(8, withdrawal(9))))).containsExactly("entry 1");
        assertThat(counting(entry(1, 0, withdrawal(7, withdrawal(8, withdrawal(9))))))
                .isEmpty();
        assertThat(counting(entry(1, 0, withdrawal(7, withdrawal(8)), withdrawal(9))))
                .as("another withdrawal stands")
                .isEmpty();
    }

    @Test
    void whatAWithdrawnCorrectionCorrectedCountsAgain() {
        assertThat(counting(entry(1, 0), entry(2, 1, withdrawal(9)))).containsExactly("entry 1");
    }

    @Test
    void aCorrectionOfACorrectionStandsForBoth() {
        assertThat(counting(entry(1, 0), entry(2, 1), entry(3, 2))).containsExactly("entry 3");
        assertThat(counting(entry(1, 0), entry(2, 1, withdrawal(9)), entry(3, 2)))
                .as("the middle one is withdrawn, the last still takes the place of both")
                .containsExactly("entry 3");
        assertThat(counting(entry(1, 0), entry(2, 1), entry(3, 2, withdrawal(9))))
                .containsExactly("entry 2");
    }

    @Test
    void twoCorrectionsOfOneEntryBothCount() {
        assertThat(counting(entry(1, 0), entry(2, 1), entry(3, 1))).containsExactly("entry 2", "entry 3");
    }

    @Test
    void aCircleThatNoHashCanMakeComesToAnEnd() {
        assertThat(counting(entry(1, 2), entry(2, 1))).isEmpty();
        assertThat(counting(entry(1, 1, withdrawal(9)))).isEmpty();
    }

    @Test
    void theOrderInWhichEntriesComeNeverMatters() {
        Random random = new Random(5);
        for (int round = 0; round < 300; round++) {
            List<Entry<String>> entries = new ArrayList<>();
            for (int i = 1; i <= 6; i++) {
                Withdrawal[] withdrawals =
                        random.nextInt(3) == 0 ? new Withdrawal[] {withdrawal(100 + i)} : new Withdrawal[0];
                entries.add(entry(i, random.nextInt(i), withdrawals));
            }
            List<String> before = Amendments.counting(Amendments.settle(entries));
            Collections.shuffle(entries, random);

            assertThat(Amendments.counting(Amendments.settle(entries))).containsExactlyInAnyOrderElementsOf(before);
        }
    }
}
