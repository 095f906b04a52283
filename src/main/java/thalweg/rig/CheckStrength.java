package thalweg.rig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;
import thalweg.units.Force;

/** Holds the peaks after a loss against the strength of what is left: points, strands and connectors that bear something. */
final class CheckStrength {

    private static final Sentence TOO_FAST = Sentence.of(
            "The strands are so stiff for this load that its motion could not be followed: the peak is unknown.");

    private static final Sentence STILL_RISING = Sentence.of(
            "At the end of the 2 s that are followed a force still rises, or the load still falls: its peak is unknown.");

    private CheckStrength() {}

    /** A part with its largest force, and the strength that is known of it. */
    private record Borne(Sentence name, double peak, PartStrength strength) {

        /** What is known of its strength [kN]: where it is unknown, that it is below the peak all the same. */
        OptionalDouble known() {
            Optional<Force> known =
                    strength.left().or(() -> strength.atMost().filter(most -> most.inKilonewtons() < peak));
            return known.isPresent() ? OptionalDouble.of(known.get().inKilonewtons()) : OptionalDouble.empty();
        }

        double ratio() {
            return known().orElse(Double.POSITIVE_INFINITY) / peak;
        }

        /** With a ratio and no force, so that it reads the same in every system of units. */
        Sentence says() {
            return Sentence.of(
                    "{0} is {1} to hold {2} times its peak",
                    name, Sentence.word(strength.believed()), Figures.times(ratio()));
        }
    }

    static WithinStrength of(RigInput input, Optional<PeakForces> peaks) {
        if (peaks.isEmpty()) {
            return new WithinStrength(Optional.empty(), OptionalDouble.empty(), TOO_FAST);
        }
        List<Borne> parts = new ArrayList<>(points(input, peaks.get()));
        parts.addAll(strands(input, peaks.get()));
        master(input, peaks.get()).ifPresent(parts::add);
        Optional<Borne> weakest =
                parts.stream().filter(part -> part.known().isPresent()).min(Comparator.comparingDouble(Borne::ratio));
        OptionalDouble ratio =
                weakest.map(part -> OptionalDouble.of(part.ratio())).orElse(OptionalDouble.empty());
        Optional<Sentence> nearest = weakest.map(Borne::says);
        if (weakest.isPresent() && weakest.get().ratio() < 1) {
            return new WithinStrength(Optional.of(false), ratio, Sentence.of("Too weak: {0}.", nearest.orElseThrow()));
        }
        List<Sentence> unknown = parts.stream()
                .filter(part -> part.known().isEmpty())
                .map(Borne::name)
                .toList();
        Optional<Sentence> known = nearest.map(part -> Sentence.of("The weakest that is known: {0}.", part));
        if (!unknown.isEmpty()) {
            Sentence why = Sentence.of("Not known: the strength of {0}.", Figures.said(unknown));
            return new WithinStrength(Optional.empty(), ratio, and(why, known));
        }
        if (peaks.get().rising()) {
            return new WithinStrength(Optional.empty(), ratio, and(STILL_RISING, known));
        }
        return new WithinStrength(
                Optional.of(true), ratio, Sentence.of("The weakest part: {0}.", nearest.orElse(Sentence.NONE)));
    }

    private static Sentence and(Sentence why, Optional<Sentence> known) {
        return known.map(more -> Sentence.of("{0} {1}", why, more)).orElse(why);
    }

    /** The points that bear something, and the connectors in them; one that stays unloaded needs no strength. */
    private static List<Borne> points(RigInput input, PeakForces peaks) {
        List<Borne> parts = new ArrayList<>();
        for (RigPoint point : input.points()) {
            Optional<Double> peak = bearing(input, peaks.on(point.name()));
            peak.flatMap(force -> peaks.countedOn(point.name()))
                    .map(Force::inKilonewtons)
                    .ifPresent(counted ->
                            parts.add(new Borne(Sentence.plain(point.name()), counted, input.strengthOf(point))));
            peak.ifPresent(force -> input.connectorAt(point)
                    .ifPresent(strength -> parts.add(new Borne(the(RigInput.connectorLabel(point)), force, strength))));
        }
        return parts;
    }

    private static Optional<Double> bearing(RigInput input, Optional<Force> peak) {
        double bears = Analyze.LOADED * input.load().weight().inKilonewtons();
        return peak.map(Force::inKilonewtons).filter(force -> force >= bears);
    }

    private static Optional<Borne> master(RigInput input, PeakForces peaks) {
        return input.masterConnector()
                .flatMap(strength -> bearing(input, Optional.of(peaks.held()))
                        .map(peak -> new Borne(the(RigInput.MASTER_CONNECTOR), peak, strength)));
    }

    private static Sentence the(String label) {
        return Sentence.of("the {0}", StrandNames.said(label));
    }

    /** The strands that bear something, each of parallel ones by itself. */
    private static List<Borne> strands(RigInput input, PeakForces peaks) {
        List<Borne> parts = new ArrayList<>();
        for (PeakForces.InStrand strand : peaks.strands()) {
            bearing(input, Optional.of(strand.tension()))
                    .ifPresent(peak -> parts.add(
                            new Borne(the(strand.label()), peak, input.strengthOfStrands(strand.label(), 1))));
        }
        return parts;
    }
}
