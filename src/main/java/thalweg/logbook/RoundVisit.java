package thalweg.logbook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import thalweg.ledger.Uid;

/**
 * A round with what was looked at on it.
 *
 * @param round it
 * @param looks inspections that count, along the line and anchor by anchor
 */
public record RoundVisit(Entry<Round> round, List<Look> looks) {

    /**
     * One part that was looked at.
     *
     * @param station where it is
     * @param part which
     * @param inspection what was found
     */
    public record Look(StationRecord station, PartRecord part, Entry<Inspection> inspection) {}

    public RoundVisit {
        looks = List.copyOf(looks);
    }

    /** The rounds of a canyon in their order, each with its inspections; those that no longer count too. */
    public static List<RoundVisit> all(CanyonRecord canyon) {
        return canyon.rounds().stream().map(round -> of(canyon, round)).toList();
    }

    /** An inspection belongs to the round that it names, or to the one that took the place of that. */
    private static RoundVisit of(CanyonRecord canyon, Entry<Round> round) {
        Set<Uid> names = names(canyon, round);
        List<Look> looks = new ArrayList<>();
        for (StationRecord station : canyon.stations()) {
            for (PartRecord part : station.parts()) {
                part.inspections().stream()
                        .filter(Entry::counts)
                        .filter(entry ->
                                entry.content().round().filter(names::contains).isPresent())
                        .forEach(entry -> looks.add(new Look(station, part, entry)));
            }
        }
        return new RoundVisit(round, looks);
    }

    /** Its own name and those of the rounds that it corrects, one after the other. */
    private static Set<Uid> names(CanyonRecord canyon, Entry<Round> round) {
        Map<Uid, Entry<Round>> known =
                canyon.rounds().stream().collect(Collectors.toMap(Entry::uid, Function.identity()));
        Set<Uid> names = new HashSet<>();
        Optional<Entry<Round>> next = Optional.of(round);
        while (next.isPresent() && names.add(next.get().uid())) {
            next = next.get().correction().flatMap(correction -> Optional.ofNullable(known.get(correction.of())));
        }
        return names;
    }
}
