package thalweg.service;

import java.util.List;
import thalweg.exchange.csv.PartsCsv;
import thalweg.logbook.FoundParts;
import thalweg.logbook.PartFinding;
import thalweg.logbook.PartRow;

/** Finds parts by their hardware, over all canyons. */
public final class FindParts {

    private final Session session;

    public FindParts(Session session) {
        this.session = session;
    }

    /** Every part that is looked for, by canyon and along the line. */
    public List<PartRow> all(PartFinding finding) {
        return session.parts().parts(finding, Integer.MAX_VALUE);
    }

    /**
     * The same, as far as they can be shown.
     *
     * @param most how many at the most
     */
    public FoundParts some(PartFinding finding, int most) {
        List<PartRow> rows = session.parts().parts(finding, most + 1);
        return new FoundParts(rows.stream().limit(most).toList(), rows.size() > most);
    }

    /** Parts as CSV for a spreadsheet. */
    public static String csv(List<PartRow> rows) {
        return PartsCsv.write(rows);
    }
}
