package thalweg.logbook;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thalweg.route.Part;
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

    /** What of the hardware may be asked for. */
    public enum Field {
        MATERIAL,
        SIZE,
        STANDARD,
        MAKER,
        BATCH;

        /** What a part has there; empty text where nobody entered it. */
        public String of(Part.Hardware hardware) {
            return switch (this) {
                case MATERIAL -> hardware.material();
                case SIZE -> hardware.size();
                case STANDARD -> hardware.standard();
                case MAKER -> hardware.maker();
                case BATCH -> hardware.batch();
            };
        }
    }

    /** The fields of the hardware that are asked for, in their order. */
    public List<Field> asked() {
        Part.Hardware wanted = new Part.Hardware(material, size, standard, maker, batch);
        return Arrays.stream(Field.values())
                .filter(field -> !field.of(wanted).isBlank())
                .toList();
    }

    /** The same, but that nothing is asked of those fields. */
    public PartFinding without(Set<Field> fields) {
        return new PartFinding(
                words,
                kind,
                fields.contains(Field.MATERIAL) ? "" : material,
                fields.contains(Field.SIZE) ? "" : size,
                fields.contains(Field.STANDARD) ? "" : standard,
                fields.contains(Field.MAKER) ? "" : maker,
                fields.contains(Field.BATCH) ? "" : batch);
    }

    /** Parts by words alone. */
    public static PartFinding of(String words) {
        return new PartFinding(words, Optional.empty(), "", "", "", "", "");
    }
}
