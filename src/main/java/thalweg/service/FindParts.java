package thalweg.service;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
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
     * A part that may be one of those that are looked for: nobody entered some of what was asked for, and the rest fits.
     *
     * @param unknown what was asked for and nobody entered, at least one
     */
    public record MayFit(PartRow row, List<PartFinding.Field> unknown) {
        public MayFit {
            unknown = List.copyOf(unknown);
        }
    }

    /**
     * Every part that may be one of those that are looked for, because some of the hardware that was asked for is not
     * entered; those that surely fit are not among them. Words and kind are held to.
     */
    public List<MayFit> mayFit(PartFinding finding) {
        List<PartFinding.Field> asked = finding.asked();
        List<MayFit> found = new ArrayList<>();
        for (int choice = 1; choice < 1 << asked.size(); choice++) {
            Set<PartFinding.Field> open = EnumSet.noneOf(PartFinding.Field.class);
            for (int i = 0; i < asked.size(); i++) {
                if ((choice >> i & 1) == 1) {
                    open.add(asked.get(i));
                }
            }
            all(finding.without(open)).stream()
                    .filter(row -> open.stream()
                            .allMatch(field -> field.of(row.part().hardware()).isBlank()))
                    .forEach(row -> found.add(new MayFit(row, List.copyOf(open))));
        }
        return found;
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

    /** Parts as CSV for a spreadsheet, with those that may fit after those that do. */
    public static String csv(List<PartRow> rows, List<MayFit> mayFit) {
        return PartsCsv.write(rows, mayFit.stream().map(MayFit::row).toList());
    }

    /** Parts as CSV for a spreadsheet. */
    public static String csv(List<PartRow> rows) {
        return PartsCsv.write(rows);
    }
}
