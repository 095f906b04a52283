package thalweg.logbook;

import java.util.Optional;
import thalweg.route.PartKind;

/**
 * What is looked for among the parts of all anchors, for a recall as an example.
 *
 * <p>Words and fields are compared without regard to accents, case and signs: each word begins a word of what is found.
 * "AB-12" finds "AB12" too, and the other way round.
 *
 * @param words of anything: label, kind, hardware, note, station, canyon; blank asks for nothing
 * @param kind empty asks for nothing
 * @param material blank asks for nothing, as do the others
 * @param size such as "10 x 90 mm"
 * @param standard such as "EN 959"
 * @param maker who made it
 * @param batch by which a recall names it
 */
public record PartFinding(
        String words,
        Optional<PartKind> kind,
        String material,
        String size,
        String standard,
        String maker,
        String batch) {

    /** Every part. */
    public static final PartFinding ALL = of("");

    /** Parts by words alone. */
    public static PartFinding of(String words) {
        return new PartFinding(words, Optional.empty(), "", "", "", "", "");
    }
}
