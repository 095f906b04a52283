package thalweg.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;

/**
 * The names of people that the records of a canyon know because somebody signed with them. Whoever is only mentioned in a
 * text is not among them, so that a sheet without names says so.
 */
final class KnownNames {

    /** Shorter pieces of a signature, and those without a capital, may be any word. */
    private static final int SHORTEST = 3;

    private static final Pattern BETWEEN = Pattern.compile("\\s*(?:[,;/&+\\n]|\\band\\b|\\by\\b|\\bet\\b)\\s*");

    private KnownNames() {}

    /** The names, the longest first. */
    static List<String> in(CanyonRecord canyon) {
        Stream<String> signed = Stream.of(
                        canyon.rounds().stream()
                                .flatMap(round -> signed(round, round.content().by())),
                        canyon.stations().stream().flatMap(KnownNames::signed))
                .flatMap(names -> names);
        Set<String> names = new TreeSet<>();
        signed.forEach(name -> {
            names.add(name.strip());
            names.addAll(List.of(BETWEEN.split(name.strip())));
        });
        return names.stream()
                .filter(name -> name.length() >= SHORTEST)
                .filter(name -> name.chars().anyMatch(letter -> Character.isUpperCase(letter) || letter > 0x2E80))
                .sorted(Comparator.comparing(String::length).reversed().thenComparing(name -> name))
                .toList();
    }

    private static Stream<String> signed(Entry<?> entry, String by) {
        return Stream.of(by, entry.author());
    }

    private static Stream<String> signed(StationRecord station) {
        return Stream.of(
                        station.notes().stream()
                                .flatMap(note -> signed(note, note.content().by())),
                        station.analyses().stream()
                                .flatMap(one -> signed(one, one.content().by())),
                        station.parts().stream()
                                .map(PartRecord::inspections)
                                .flatMap(List::stream)
                                .flatMap(found -> signed(found, found.content().by())))
                .flatMap(names -> names);
    }

    /** What finds any of them as whole words; nothing where there is none. */
    static Optional<Pattern> pattern(CanyonRecord canyon) {
        List<String> names = in(canyon);
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(Pattern.compile("(?<![\\p{L}\\p{N}])(?:"
                        + names.stream().map(Pattern::quote).collect(Collectors.joining("|"))
                        + ")(?![\\p{L}\\p{N}])"));
    }
}
