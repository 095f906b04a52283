package thalweg.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import thalweg.due.DueTask;
import thalweg.due.DueWords;
import thalweg.rig.RigMaterial;
import thalweg.settings.TripFigure;
import thalweg.text.Phrases;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** What to bring, in words. */
final class BringWords {

    private final Plan plan;
    private final Phrases phrases;
    private final UnitSystem units;

    private BringWords(Plan plan, Phrases phrases, UnitSystem units) {
        this.plan = plan;
        this.phrases = phrases;
        this.units = units;
    }

    static List<String> of(Plan plan, Phrases phrases, UnitSystem units) {
        return new BringWords(plan, phrases, units).lines();
    }

    private List<String> lines() {
        Bring bring = plan.bring();
        List<String> lines = new ArrayList<>();
        lines.add(phrases.say(
                bring.items().isEmpty() ? "plan.bring.reserve" : "plan.bring.together",
                total(bring.webbing()),
                total(bring.cord()),
                phrases.count("plan.bring.links", bring.links())));
        bring.items().forEach(item -> lines.add(item(item)));
        if (!bring.notReplaced().isEmpty()) {
            lines.add(phrases.say(
                    "plan.bring.not_replaced",
                    bring.notReplaced().stream()
                            .map(part -> part.station() + ", " + part(part))
                            .collect(Collectors.joining("; "))));
        }
        if (!bring.notEntered().isEmpty()) {
            lines.add(phrases.say("plan.bring.not_entered", String.join(", ", bring.notEntered())));
        }
        return lines;
    }

    /** What it rests on. */
    static String assumed(Plan plan, Phrases phrases, UnitSystem units) {
        BringWords words = new BringWords(plan, phrases, units);
        return phrases.say(
                "plan.assumed.bring",
                words.figure(TripFigure.WEBBING_M),
                words.figure(TripFigure.CORD_M),
                words.figure(TripFigure.RESERVE_WEBBING_M),
                words.figure(TripFigure.RESERVE_CORD_M),
                phrases.count("plan.bring.links", (long) plan.figure(TripFigure.RESERVE_LINKS)));
    }

    /** A figure from memory is not told to the centimetre. */
    private String figure(TripFigure figure) {
        return new Length(plan.figure(figure)).print(units);
    }

    private String total(Length length) {
        boolean measured = plan.bring().items().stream().anyMatch(BringWords::isMeasured);
        return measured ? length(length) : length.print(units);
    }

    private static boolean isMeasured(Bring.Item item) {
        return item.basis() == Bring.Basis.RIG || item.basis() == Bring.Basis.RIG_AND_RULE;
    }

    private String length(Bring.Item item) {
        Length length = item.length().orElseThrow();
        return isMeasured(item) ? length(length) : length.print(units);
    }

    private String length(Length length) {
        return RigMaterial.print(length, units);
    }

    private String item(Bring.Item item) {
        String parts = item.parts().stream().map(this::part).collect(Collectors.joining(", "));
        String what = switch (item.kind()) {
            case WEBBING -> phrases.say("plan.bring.webbing", length(item));
            case CORD -> phrases.say("plan.bring.cord", length(item));
            case LINK -> phrases.count("plan.bring.links", item.links());
        };
        String basis = phrases.say(
                "plan.bring.basis." + item.basis().name().toLowerCase(Locale.ROOT),
                String.join(", ", item.roundUnknown()));
        String line = phrases.say("plan.bring.item", item.parts().get(0).station(), parts, what, basis);
        return item.old() ? line + "; " + phrases.say("plan.rig.old") : line;
    }

    private String part(Bring.Needy part) {
        LocalDate day = plan.request().on();
        List<String> why = new ArrayList<>();
        part.found()
                .ifPresent(
                        found -> why.add(phrases.say("condition." + found.name().toLowerCase(Locale.ROOT))));
        part.due()
                .filter(due -> part.found().isEmpty() || due.day().isPresent())
                .filter(due -> due.task() != DueTask.MEND)
                .ifPresent(due -> why.add(DueWords.what(due, day, phrases)));
        return phrases.say("plan.bring.part", part.label(), String.join("; ", why));
    }
}
