package thalweg.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thalweg.route.Canyon;
import thalweg.route.CanyonText;
import thalweg.route.Prose;

/** What people wrote about a canyon as a whole, and the box that a group fills in before it goes. */
final class AboutPart {

    private static final List<String> BLANKS = List.of("rescue", "callout", "signal", "hospital", "group", "water");

    private static final List<String> CALLS = List.of("rescue", "callout", "signal");

    /** Ropes and flood stand at a glance, help in its own box. */
    private static final Set<CanyonText> SAID_ELSEWHERE =
            EnumSet.of(CanyonText.ROPES, CanyonText.CATCHMENT, CanyonText.EMERGENCY);

    private final Wording wording;

    AboutPart(Wording wording) {
        this.wording = wording;
    }

    Section emergency(Canyon canyon) {
        return emergency(canyon, BLANKS);
    }

    /** The same with what is needed in the canyon, and without what is filled in before the start. */
    Section help(Canyon canyon) {
        return emergency(canyon, CALLS);
    }

    private Section emergency(Canyon canyon, List<String> toFillIn) {
        Fact known = wording.fact(
                "sheet.emergency.known", wording.orUnknown(canyon.prose().under(CanyonText.EMERGENCY)));
        boolean grouped = wording.options().trip().isPresent()
                && wording.options().contents().names();
        List<String> blanks = toFillIn.stream()
                .filter(blank -> !grouped || !blank.equals("group"))
                .map(blank -> wording.say("sheet.blank." + blank))
                .toList();
        return Section.of(
                "emergency",
                wording.say("sheet.emergency"),
                List.of(new Block.Facts(List.of(known)), new Block.Blanks(blanks)));
    }

    Section about(Canyon canyon) {
        List<Fact> facts = new ArrayList<>();
        Arrays.stream(CanyonText.values())
                .filter(heading -> !SAID_ELSEWHERE.contains(heading))
                .forEach(heading -> fact(canyon.prose(), heading).ifPresent(facts::add));
        wording.privateNote(canyon.uid()).ifPresent(facts::add);
        return Section.of("about", wording.say("sheet.about"), List.of(new Block.Facts(facts)));
    }

    /** By which a keeper finds the record again when the sheet comes back with new findings on it. */
    Section origin(Canyon canyon) {
        List<Fact> facts = List.of(
                wording.fact("sheet.record", Words.of(canyon.uid().text())),
                wording.fact(
                        "sheet.made_with",
                        wording.words("sheet.program", wording.options().program())));
        return Section.of("origin", wording.say("sheet.origin"), List.of(new Block.Facts(facts)));
    }

    /** Notes are an extra: a canyon without them lacks nothing. */
    private Optional<Fact> fact(Prose<CanyonText> prose, CanyonText heading) {
        if (heading == CanyonText.NOTES && prose.under(heading).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Fact(wording.of("canyon_text", heading), List.of(wording.orUnknown(prose.under(heading)))));
    }
}
