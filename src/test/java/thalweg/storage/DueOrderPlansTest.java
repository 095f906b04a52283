package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The next piece of what is due is read from where the last one ended: nothing is sorted, and nothing passed over. */
class DueOrderPlansTest {

    @ParameterizedTest
    @ValueSource(strings = {DueOrderStore.LOOKS, DueOrderStore.TEXTILE, DueOrderStore.AGELESS})
    void aPieceIsReadFromItsIndexAlone(String query) {
        try (Database database = Database.inMemory()) {
            String whole = "explain query plan " + query.formatted("when 0 then '2020-01-01'");
            List<String> plan = database.read(sql -> sql.all(whole, row -> row.getString("detail")));

            assertThat(plan).singleElement().asString().contains("SEARCH part_due USING COVERING INDEX part_due_by_");
            assertThat(plan.get(0)).contains("canyon_sort,canyon,position)>(");
        }
    }
}
