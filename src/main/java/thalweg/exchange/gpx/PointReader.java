package thalweg.exchange.gpx;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import thalweg.body.Limits;
import thalweg.fault.Sentence;
import thalweg.json.Findings;
import thalweg.place.Position;
import thalweg.text.Clean;
import thalweg.units.Length;

/** Reads one point with what is said about it, in whatever order that stands. */
final class PointReader {

    private static final Set<String> READ = Set.of("ele", "time", "name", "cmt", "desc", "sym", "type");

    /** Plain decimals as the schema has them, and the short exponents that some programs write for small numbers. */
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,9}(\\.\\d{0,30})?|\\.\\d{1,30})([eE][+-]?\\d{1,2})?");

    private final Elements in;
    private final Findings findings;
    private final List<Sentence> remarks;

    PointReader(Elements in, Findings findings, List<Sentence> remarks) {
        this.in = in;
        this.findings = findings;
        this.remarks = remarks;
    }

    /** The point that begins here; empty where something is wrong with it, which is then among the findings. */
    Optional<Waypoint> point(Waypoint.Origin origin) throws XMLStreamException {
        int line = in.line();
        int before = findings.count();
        Optional<Long> lat = degrees(line, "lat", "latitude", 90);
        Optional<Long> lon = degrees(line, "lon", "longitude", 180);
        Map<String, String> texts = new HashMap<>();
        Optional<Length> elevation = Optional.empty();
        while (in.child()) {
            String key = in.name();
            int at = in.line();
            if (!in.isOwn() || !READ.contains(key)) {
                in.skip();
                continue;
            }
            String text = in.text();
            if (texts.putIfAbsent(key, text) != null) {
                findings.add("", at, Sentence.of("the point has a second <{0}>; keep the one that is right.", key));
            } else if (key.equals("ele")) {
                elevation = elevation(at, text);
            }
        }
        if (findings.count() > before || lat.isEmpty() || lon.isEmpty()) {
            return Optional.empty();
        }
        Texts said = new Texts(line, texts);
        return Optional.of(new Waypoint(
                line,
                origin,
                said.line("name", "name"),
                new Position(lat.get(), lon.get(), Optional.empty()),
                elevation,
                said.lines("cmt", "comment"),
                said.lines("desc", "description"),
                said.line("sym", "symbol"),
                said.line("type", "type"),
                said.line("time", "time")));
    }

    /** The texts of one point, cleaned; that one was cut is remarked. */
    private final class Texts {

        private final int line;
        private final Map<String, String> texts;

        Texts(int line, Map<String, String> texts) {
            this.line = line;
            this.texts = texts;
        }

        String line(String key, String what) {
            String whole = Clean.line(texts.getOrDefault(key, ""), Integer.MAX_VALUE);
            return told(whole, Clean.line(whole, Limits.NAME), what, Limits.NAME);
        }

        String lines(String key, String what) {
            String whole =
                    Clean.lines(texts.getOrDefault(key, ""), Integer.MAX_VALUE).strip();
            return told(whole, Clean.lines(whole, Waypoint.LONGEST_NOTE).strip(), what, Waypoint.LONGEST_NOTE);
        }

        private String told(String whole, String kept, String what, int longest) {
            if (!kept.equals(whole)) {
                remarks.add(Sentence.of(
                        "line {0}: the {1} is longer than {2} characters; only its beginning is taken.",
                        line, Sentence.word(what), longest));
            }
            return kept;
        }
    }

    /** Empty text says nothing, and that is allowed: some devices write it where they have no fix in height. */
    private Optional<Length> elevation(int line, String text) {
        String digits = text.strip();
        if (digits.isEmpty()) {
            return Optional.empty();
        }
        Optional<BigDecimal> number = number(digits).filter(Waypoint::canBeElevation);
        if (number.isEmpty()) {
            findings.add(
                    "",
                    line,
                    Sentence.of(
                            "the elevation \"{0}\" is no number of metres from {1} to {2}; mend it or take it out.",
                            shown(digits), Waypoint.LEAST_ELEVATION, Waypoint.MOST_ELEVATION));
        }
        return number.map(metres -> new Length(metres.doubleValue()));
    }

    /**
     * Degrees of an attribute.
     *
     * @param most largest absolute value; the schema has +180 itself written as -180
     * @return [1e-7 °]
     */
    private Optional<Long> degrees(int line, String attribute, String what, int most) {
        Optional<String> text = in.attribute(attribute);
        if (text.isEmpty()) {
            findings.add(
                    "",
                    line,
                    Sentence.of(
                            "the point has no {0} ({1}); add it or take the point out.",
                            Sentence.word(what), attribute));
            return Optional.empty();
        }
        BigDecimal limit = BigDecimal.valueOf(most);
        boolean open = most == 180;
        Optional<BigDecimal> number = number(text.get().strip())
                .filter(degrees -> degrees.abs().compareTo(limit) <= 0)
                .filter(degrees -> !open || degrees.compareTo(limit) < 0);
        if (number.isEmpty()) {
            findings.add(
                    "",
                    line,
                    open
                            ? Sentence.of(
                                    "the {0} \"{1}\" is no number of degrees from -{2} to below {2}, with a decimal"
                                            + " point.",
                                    Sentence.word(what), shown(text.get()), most)
                            : Sentence.of(
                                    "the {0} \"{1}\" is no number of degrees from -{2} to {2}, with a decimal point.",
                                    Sentence.word(what), shown(text.get()), most));
            return Optional.empty();
        }
        long e7 = Position.e7(number.get());
        return Optional.of(open && e7 == most * Position.PER_DEGREE ? -e7 : e7);
    }

    private static Optional<BigDecimal> number(String text) {
        return NUMBER.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : Optional.empty();
    }

    private static String shown(String text) {
        return Clean.line(text, 40);
    }
}
