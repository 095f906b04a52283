package thalweg.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import thalweg.due.Due;
import thalweg.due.DueReason;
import thalweg.due.DueRules;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.route.ObstacleKind;
import thalweg.route.PartKind;
import thalweg.settings.TripFigure;
import thalweg.units.Length;

/**
 * Webbing, cord and links to bring for parts that were found worn, doubtful, unsafe or gone, or are due on the day.
 *
 * <p>What is due only for a look may turn out sound; it counts all the same, for nobody knows that before. Lengths are those
 * to cut of the newest kept analysis that is surely of the anchor, else a figure from memory for each part.
 */
public final class BringMaterial {

    private final DueRules rules;
    private final LocalDate day;
    private final ToDoubleFunction<TripFigure> figures;
    private final List<Bring.Item> items = new ArrayList<>();
    private final List<Bring.Needy> notReplaced = new ArrayList<>();

    private BringMaterial(DueRules rules, LocalDate day, ToDoubleFunction<TripFigure> figures) {
        this.rules = rules;
        this.day = day;
        this.figures = figures;
    }

    /**
     * What to bring down a canyon.
     *
     * @param rules with the figures that hold
     * @param day of the trip
     * @param kept the analyses of a station that count and can be read, the newest first
     * @param figures in their units
     */
    public static Bring of(
            CanyonRecord canyon,
            DueRules rules,
            LocalDate day,
            Function<StationRecord, List<KeptMaterial>> kept,
            ToDoubleFunction<TripFigure> figures) {
        BringMaterial bring = new BringMaterial(rules, day, figures);
        for (StationRecord station : canyon.stations()) {
            List<KeptMaterial> rigs = kept.apply(station);
            for (AnchorRecord anchor : station.anchors()) {
                bring.anchor(station, anchor, rigs);
            }
        }
        return bring.done(notEntered(canyon));
    }

    private Bring done(List<String> notEntered) {
        double links =
                items.stream().mapToInt(Bring.Item::links).sum() + figures.applyAsDouble(TripFigure.RESERVE_LINKS);
        return new Bring(
                items,
                total(Bring.Kind.WEBBING, TripFigure.RESERVE_WEBBING_M),
                total(Bring.Kind.CORD, TripFigure.RESERVE_CORD_M),
                (int) Math.ceil(links),
                notReplaced,
                notEntered);
    }

    private Length total(Bring.Kind kind, TripFigure reserve) {
        double metres = items.stream()
                .filter(item -> item.kind() == kind)
                .flatMap(item -> item.length().stream())
                .mapToDouble(Length::metres)
                .sum();
        return new Length(metres + figures.applyAsDouble(reserve));
    }

    private static List<String> notEntered(CanyonRecord canyon) {
        List<String> names = new ArrayList<>();
        for (LineRecord place : canyon.line()) {
            if (place.obstacle().kind() == ObstacleKind.DROP
                    && place.stations().stream()
                            .allMatch(station -> station.parts().isEmpty())) {
                String name = place.obstacle().name();
                names.add(name.isEmpty() ? "#" + place.number() : "#" + place.number() + " " + name);
            }
        }
        return names;
    }

    private void anchor(StationRecord station, AnchorRecord anchor, List<KeptMaterial> kept) {
        List<Bring.Needy> textile = new ArrayList<>();
        List<Bring.Needy> links = new ArrayList<>();
        List<Bring.Kind> kinds = new ArrayList<>();
        for (PartRecord part : anchor.parts()) {
            Optional<Bring.Needy> needy = needy(station, part);
            if (needy.isEmpty()) {
                continue;
            }
            Optional<Bring.Kind> kind = kind(part.part().kind());
            if (kind.isEmpty()) {
                needy.filter(one -> one.found()
                                .filter(found -> found.isWorseThan(Condition.WORN))
                                .isPresent())
                        .ifPresent(notReplaced::add);
            } else if (kind.get() == Bring.Kind.LINK) {
                links.add(needy.get());
            } else {
                textile.add(needy.get());
                kinds.add(kind.get());
            }
        }
        if (!textile.isEmpty()) {
            textile(textile, kinds, of(station, anchor, kept));
        }
        if (!links.isEmpty()) {
            items.add(new Bring.Item(
                    links, Bring.Kind.LINK, Optional.empty(), links.size(), Bring.Basis.EACH, false, List.of()));
        }
    }

    private void textile(List<Bring.Needy> parts, List<Bring.Kind> kinds, Optional<KeptMaterial> kept) {
        if (kept.isEmpty()) {
            for (int i = 0; i < parts.size(); i++) {
                Bring.Kind kind = kinds.get(i);
                items.add(new Bring.Item(
                        List.of(parts.get(i)),
                        kind,
                        Optional.of(new Length(rule(kind))),
                        0,
                        Bring.Basis.RULE,
                        false,
                        List.of()));
            }
            return;
        }
        // The analysis is of the whole anchor: whichever part of it is replaced, all may have to be cut anew.
        Bring.Kind kind = kinds.get(0);
        List<String> unknown = kept.get().material().unknown();
        double metres = kept.get().material().total().metres() + unknown.size() * rule(kind);
        items.add(new Bring.Item(
                parts,
                kind,
                Optional.of(new Length(metres)),
                0,
                unknown.isEmpty() ? Bring.Basis.RIG : Bring.Basis.RIG_AND_RULE,
                kept.get().old(),
                unknown));
    }

    private double rule(Bring.Kind kind) {
        return figures.applyAsDouble(kind == Bring.Kind.CORD ? TripFigure.CORD_M : TripFigure.WEBBING_M);
    }

    /** The newest analysis that can be of no other anchor of the station. */
    private static Optional<KeptMaterial> of(StationRecord station, AnchorRecord anchor, List<KeptMaterial> kept) {
        return kept.stream()
                .filter(one -> station.anchors().size() == 1
                        || station.anchors().stream()
                                .filter(other -> hasAll(other, one))
                                .toList()
                                .equals(List.of(anchor)))
                .findFirst();
    }

    private static boolean hasAll(AnchorRecord anchor, KeptMaterial kept) {
        List<String> labels =
                anchor.parts().stream().map(record -> record.part().label()).toList();
        return labels.containsAll(kept.points());
    }

    private Optional<Bring.Needy> needy(StationRecord station, PartRecord part) {
        Optional<Condition> found =
                part.state().condition().filter(condition -> condition.isWorseThan(Condition.SOUND));
        Optional<Due> due =
                rules
                        .of(
                                part.part(),
                                part.state(),
                                part.replacedSince(),
                                station.station().exposure())
                        .stream()
                        .filter(one -> one.isDue(day) || one.reason() == DueReason.AGE_UNKNOWN)
                        .findFirst();
        return found.isEmpty() && due.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Bring.Needy(station.station().name(), part.part().label(), found, due));
    }

    /** What replaces a part of that kind; empty where nothing that is carried does. */
    private static Optional<Bring.Kind> kind(PartKind kind) {
        return switch (kind) {
            case WEBBING, SLING -> Optional.of(Bring.Kind.WEBBING);
            case CORD -> Optional.of(Bring.Kind.CORD);
            case RING, QUICK_LINK, KARABINER -> Optional.of(Bring.Kind.LINK);
            case BOLT, PITON, TREE, BOULDER, CHOCKSTONE, THREAD, CHOCK, OTHER_POINT, ROPE, CHAIN, OTHER_MATERIAL ->
                Optional.empty();
        };
    }
}
