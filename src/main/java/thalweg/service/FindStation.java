package thalweg.service;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.text.Fold;

/** Finds the one station of a canyon that the number of its place, part of its name or its id stands for. */
public final class FindStation {

    private final CanyonRecord canyon;

    public FindStation(CanyonRecord canyon) {
        this.canyon = canyon;
    }

    private record At(int place, StationRecord station) {

        String name() {
            return station.station().name();
        }

        String told() {
            return name() + ", place " + place + " (" + station.station().uid().text() + ")";
        }
    }

    /**
     * The station.
     *
     * @throws InputException when none or several fit, with what would do
     */
    public StationRecord named(String words) {
        String asked = words.strip();
        List<At> all = canyon.line().stream().flatMap(FindStation::at).toList();
        Optional<Uid> uid = Uid.parse(asked);
        List<At> fitting = all.stream()
                .filter(one -> uid.isPresent()
                        ? one.station().station().uid().equals(uid.get())
                        : Integer.toString(one.place()).equals(asked) || begins(one.name(), asked))
                .toList();
        List<At> exact = fitting.stream()
                .filter(one -> Fold.fold(one.name()).equals(Fold.fold(asked)))
                .toList();
        List<At> best = exact.isEmpty() ? fitting : exact;
        if (best.size() == 1) {
            return best.get(0).station();
        }
        String name = canyon.canyon().name();
        if (all.isEmpty()) {
            throw new InputException(Sentence.of("The canyon {0} has no station yet.", name));
        }
        throw new InputException(
                best.isEmpty()
                        ? Sentence.of("The canyon {0} has no station \"{1}\"; it has: {2}.", name, asked, listed(all))
                        : Sentence.of(
                                "\"{0}\" fits several stations of {1}; name one by its id: {2}.",
                                asked, name, listed(best)));
    }

    private static Stream<At> at(LineRecord place) {
        return place.stations().stream().map(station -> new At(place.number(), station));
    }

    /** Whether every word begins a word of the name. */
    private static boolean begins(String name, String words) {
        List<String> inName = Fold.tokens(name);
        List<String> asked = Fold.tokens(words);
        return !asked.isEmpty()
                && asked.stream().allMatch(word -> inName.stream().anyMatch(token -> token.startsWith(word)));
    }

    private static String listed(List<At> stations) {
        return stations.stream().map(At::told).collect(Collectors.joining("; "));
    }
}
