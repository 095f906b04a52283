package thalweg.ledger;

/**
 * How far a ledger had been written. It means something in that one database alone, where entries are only ever added, in
 * the order of these numbers.
 *
 * @param revisions number of the last revision, 0 where there was none
 * @param facts number of the last fact, 0 where there was none
 */
public record LedgerPlace(long revisions, long facts) {

    public LedgerPlace {
        if (revisions < 0 || facts < 0) {
            throw new IllegalArgumentException("a ledger begins at 0");
        }
    }
}
