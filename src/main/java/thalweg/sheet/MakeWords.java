package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartPlace;
import thalweg.units.Length;

/** What a part is, where it is, and what it was rated for; each as known or said to be unknown. */
final class MakeWords {

    private static final PartPlace ORIGIN = new PartPlace(new Length(0), new Length(0), new Length(0));

    private final Wording wording;

    MakeWords(Wording wording) {
        this.wording = wording;
    }

    /** Maker and batch matter where somebody noted them, for recalls; a canyon's trees and boulders have none. */
    List<Words> made(Part part) {
        Part.Hardware made = part.hardware();
        List<Words> lines = new ArrayList<>();
        lines.add(Words.of(wording.of("part", part.kind())));
        lines.add(wording.orElse(made.material(), "sheet.part.material.unknown"));
        lines.add(wording.orElse(made.size(), "sheet.part.size.unknown"));
        if (isMade(part.kind()) || !made.standard().isBlank()) {
            lines.add(wording.orElse(made.standard(), "sheet.part.standard.unknown"));
        }
        if (!made.maker().isBlank()) {
            lines.add(wording.words("sheet.part.maker", made.maker()));
        }
        if (!made.batch().isBlank()) {
            lines.add(wording.words("sheet.part.batch", made.batch()));
        }
        part.place().ifPresent(place -> lines.add(place(place)));
        return lines;
    }

    private static boolean isMade(PartKind kind) {
        return switch (kind) {
            case TREE, BOULDER, CHOCKSTONE, THREAD -> false;
            case BOLT,
                    PITON,
                    CHOCK,
                    OTHER_POINT,
                    WEBBING,
                    CORD,
                    SLING,
                    ROPE,
                    CHAIN,
                    RING,
                    QUICK_LINK,
                    KARABINER,
                    OTHER_MATERIAL -> true;
        };
    }

    private Words place(PartPlace place) {
        if (place.equals(ORIGIN)) {
            return wording.words("sheet.part.first");
        }
        return wording.words(
                "sheet.part.at",
                signed(place.right(), "right", "left"),
                signed(place.up(), "up", "down"),
                signed(place.out(), "out", "in"));
    }

    private String signed(Length length, String positive, String negative) {
        String direction = length.metres() < 0 ? negative : positive;
        return wording.say("sheet.part." + direction, wording.handWidths(length));
    }

    /** A bolt has a strength across its axis and one along it; every other part has one. */
    List<Words> strength(Part part) {
        List<Words> lines = new ArrayList<>();
        if (part.kind() == PartKind.BOLT || part.axialStrength().isPresent()) {
            lines.add(directed("sheet.part.across", part.strength().map(wording::force)));
            lines.add(directed("sheet.part.along", part.axialStrength().map(wording::force)));
        } else {
            lines.add(wording.force(part.strength()));
        }
        if (part.holdsAlone().isPresent()) {
            lines.add(Words.of(wording.of("holds", part.holdsAlone().get())));
        } else if (part.kind().isPoint()) {
            lines.add(wording.toned(Tone.UNKNOWN, "holds.unknown"));
        }
        return lines;
    }

    private Words directed(String key, Optional<String> force) {
        return force.map(known -> wording.words(key, known))
                .orElseGet(() -> wording.toned(Tone.UNKNOWN, key, wording.say("unknown")));
    }
}
