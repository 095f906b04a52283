package thalweg.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thalweg.exchange.json.RecordsHash;
import thalweg.ledger.Hash;
import thalweg.ledger.Uid;
import thalweg.logbook.Entry;
import thalweg.logbook.GivenSheet;
import thalweg.logbook.SheetGiven;
import thalweg.route.PartialDate;
import thalweg.storage.LocalStore;

/** Lists the sheets that were given out, and whether the records say something else since. */
public final class ListGiven {

    private static final Comparator<Entry<SheetGiven>> NEWEST_FIRST = Comparator.comparing(
                    (Entry<SheetGiven> entry) -> entry.content().on(), PartialDate.BY_LAST_DAY)
            .thenComparing(entry -> entry.content().number())
            .reversed();

    private final Session session;

    public ListGiven(Session session) {
        this.session = session;
    }

    /**
     * The sheets of one canyon, newest first, or those of all, canyon by canyon.
     *
     * @param canyon empty for all
     */
    public List<GivenSheet> of(Optional<Uid> canyon) {
        List<GivenSheet> given = new ArrayList<>();
        for (LocalStore.SheetsOf of : session.local().sheets(canyon)) {
            Optional<Hash> now = session.records().canyon(of.canyon().uid()).map(RecordsHash::of);
            of.sheets().stream()
                    .sorted(NEWEST_FIRST)
                    .forEach(entry -> given.add(new GivenSheet(
                            of.canyon(),
                            entry,
                            !now.equals(Optional.of(entry.content().records())))));
        }
        return given;
    }
}
