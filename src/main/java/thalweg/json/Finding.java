package thalweg.json;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.fault.Sentence;

/**
 * One thing that is wrong with what was read.
 *
 * @param path where, such as "canyons[0].stations[2].side"; empty for the whole
 * @param line on which it begins, or the object around it, 0 where that is not known
 * @param what is wrong and what would do, beginning in lower case
 */
public record Finding(String path, int line, Sentence what) {

    /** What is wrong, in English. */
    public String sentence() {
        return what.toString();
    }

    /** Where and what, as one line for a person. */
    public Sentence saying() {
        Optional<Sentence> counted = line > 0 ? Optional.of(Sentence.of("line {0}", line)) : Optional.empty();
        Optional<Sentence> named = path.isEmpty() ? Optional.empty() : Optional.of(Sentence.plain(path));
        List<Sentence> where =
                Stream.of(counted, named).flatMap(Optional::stream).toList();
        return where.isEmpty() ? what : Sentence.of("{0}: {1}", Sentence.joined(", ", where), what);
    }

    /** As one line, in English. */
    public String print() {
        return saying().toString();
    }
}
