package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import thalweg.rig.PointKind;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigMaterial;
import thalweg.rig.RigPoint;
import thalweg.rig.SlungFigures;
import thalweg.text.Phrases;
import thalweg.units.Force;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** What is slung round points, in words, the same on sheets, on the screen and in the terminal. */
public final class SlingWords {

    private final Phrases phrases;
    private final UnitSystem units;

    /**
     * Words in a language and a system of units.
     */
    public SlingWords(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** A sentence for each sling, and for each natural point without one; none for a rig of bolts. */
    public List<String> sentences(RigAnswer answer) {
        List<String> sentences = new ArrayList<>();
        SlungFigures.of(answer).forEach(sling -> sentences.add(sentence(sling)));
        for (RigPoint point : answer.input().points()) {
            boolean natural = point.is().filter(PointKind::isNatural).isPresent();
            if (natural && point.sling().isEmpty()) {
                sentences.add(phrases.say("rig.sling.none", named(point)));
            }
        }
        return sentences;
    }

    private String sentence(SlungFigures slung) {
        String point = named(slung.point());
        String tie = phrases.say(slung.sling().tie().key());
        String width = slung.sling().width().printFine(units);
        String end = slung.sling()
                .reach()
                .map(reach -> phrases.say("rig.sling.end", reach.printFine(units)))
                .orElse(phrases.say("rig.sling.to_master"));
        List<String> sides =
                slung.sides().stream().map((Force side) -> side.print(units)).toList();
        int strands = slung.sling().tie().strandsASide();
        if (sides.size() == 1) {
            return phrases.say("rig.sling.one_side", point, tie, end, sides.get(0), strands);
        }
        return slung.angle()
                .map(angle -> phrases.say(
                        "rig.sling",
                        point,
                        tie,
                        width,
                        end,
                        angle.print(),
                        slung.widest().orElse(angle).print(),
                        sides.get(0),
                        sides.get(1),
                        strands))
                .orElseGet(() ->
                        phrases.say("rig.sling.apart", point, tie, width, end, sides.get(0), sides.get(1), strands));
    }

    private String named(RigPoint point) {
        return point.is()
                .map(kind -> phrases.say("rig.sling.point", point.name(), phrases.say(kind.key())))
                .orElse(point.name());
    }

    /** What is to be said under the material of a rig: what is not in its length, and where the rest is from. */
    public List<String> notes(RigMaterial material) {
        List<String> notes = new ArrayList<>();
        if (!material.unknown().isEmpty()) {
            notes.add(phrases.say("rig.material.unknown", String.join(", ", material.unknown())));
        }
        notes.add(phrases.say(material.slung() ? "rig.material.note_slung" : "rig.material.note"));
        return notes;
    }

    /** The material of a rig as one sentence of a sheet. */
    public String material(RigMaterial material) {
        Length total = material.total();
        String sum = phrases.say("rig.material.sheet", RigMaterial.print(total, units), material.connectors());
        return material.unknown().isEmpty()
                ? sum
                : phrases.say("rig.material.sheet_unknown", sum, String.join(", ", material.unknown()));
    }
}
