package thalweg.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.units.Length;

/**
 * A profile as lines of text, one a place, that keep their scale in any font and where spaces are lost: a row of dots is
 * the way to the place, a row of bars its fall, and a question mark stands for either that is unknown.
 */
public final class ProfileLines {

    private static final int MOST_DOTS = 16;
    private static final int MOST_BARS = 20;
    private static final String DOT = ".";
    private static final String BAR = "|";
    private static final String UNKNOWN = "?";

    private final Profile profile;
    private final ProfileWords words;
    private final double metresPerDot;
    private final double metresPerBar;

    private ProfileLines(Profile profile, ProfileWords words) {
        this.profile = profile;
        this.words = words;
        List<Stop> stops = profile.stops();
        double way = IntStream.range(1, stops.size())
                .filter(this::isWayKnown)
                .mapToDouble(this::way)
                .max()
                .orElse(0);
        double fall = stops.stream().mapToDouble(Stop::height).max().orElse(0);
        Ticks ticks = new Ticks(words.units());
        this.metresPerDot = ticks.step(way / MOST_DOTS);
        this.metresPerBar = ticks.step(fall / MOST_BARS);
    }

    /**
     * The lines, the first of which says what it adds up to, what is unknown and what the signs are.
     *
     * @param profile that can be drawn
     */
    public static List<String> of(Profile profile, ProfileWords words) {
        return new ProfileLines(profile, words).lines();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        Optional<Length> bar = Optional.of(new Length(metresPerBar)).filter(length -> profile.depth() > 0);
        Optional<Length> dot =
                Optional.of(new Length(metresPerDot)).filter(length -> profile.spacing() == Spacing.TO_SCALE);
        lines.add(words.plain(profile, bar, dot));
        for (int i = 0; i < profile.size(); i++) {
            Stop stop = profile.stops().get(i);
            List<String> texts = words.captions().of(stop);
            lines.add((way(i) > 0 || !isWayKnown(i) ? dots(i) : "") + bars(stop) + texts.get(texts.size() - 1));
        }
        return lines;
    }

    /** From the place before [m]; nothing before the first, and where places have no scale. */
    private double way(int index) {
        boolean hasWay = index > 0 && profile.spacing() == Spacing.TO_SCALE;
        return hasWay
                ? profile.stops().get(index).along()
                        - profile.stops().get(index - 1).along()
                : 0;
    }

    private boolean isWayKnown(int index) {
        return index == 0
                || profile.spacing() != Spacing.TO_SCALE
                || (profile.stops().get(index).placed()
                        && profile.stops().get(index - 1).placed());
    }

    private String dots(int index) {
        return isWayKnown(index) ? DOT.repeat(upwards(way(index) / metresPerDot)) + " " : UNKNOWN + " ";
    }

    private String bars(Stop stop) {
        if (stop.fall() == Fall.UNKNOWN) {
            return UNKNOWN + " ";
        }
        return stop.height() > 0 ? BAR.repeat(upwards(stop.height() / metresPerBar)) + " " : "";
    }

    private static int upwards(double number) {
        return (int) Math.ceil(number - 1e-9);
    }
}
