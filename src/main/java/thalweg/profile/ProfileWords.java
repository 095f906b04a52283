package thalweg.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import thalweg.logbook.LineRecord;
import thalweg.route.ObstacleKind;
import thalweg.text.Phrases;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** What is said about a profile: at what scale it is drawn, what is unknown, what its marks mean. */
public final class ProfileWords {

    /** So many places are named in a sentence; the others are counted. */
    private static final int MOST_NUMBERS = 12;

    private static final List<ObstacleKind> MARKED =
            List.of(ObstacleKind.HAZARD, ObstacleKind.ESCAPE, ObstacleKind.SWIM);

    private final Phrases phrases;
    private final UnitSystem units;
    private final String legend;

    /**
     * @param phrases words of the domain and of profiles
     * @param units in which quantities are shown
     */
    public ProfileWords(Phrases phrases, UnitSystem units) {
        this(phrases, units, "profile.legend.");
    }

    private ProfileWords(Phrases phrases, UnitSystem units, String legend) {
        this.phrases = phrases;
        this.units = units;
        this.legend = legend;
    }

    /** The same where letters stand for small shapes. */
    public ProfileWords withLetters() {
        return new ProfileWords(phrases, units, "profile.letters.");
    }

    UnitSystem units() {
        return units;
    }

    Captions captions() {
        return new Captions(phrases, units);
    }

    /** What stands in place of the picture of a profile that cannot be drawn. */
    public String refusal(Profile profile) {
        if (profile.size() == 0) {
            return phrases.say("profile.none.empty");
        }
        return phrases.say("profile.none") + " " + spacing(profile, "profile.none.");
    }

    /** What must be said above a profile in plain text: what it adds up to, what is unknown, what the signs are. */
    String plain(Profile profile, Optional<Length> bar, Optional<Length> dot) {
        List<String> sentences = new ArrayList<>(summary(profile));
        sentences.addAll(unknowns(profile, "profile.plain."));
        bar.ifPresent(length -> sentences.add(phrases.say("profile.plain.bar", length.print(units))));
        dot.ifPresent(length -> sentences.add(phrases.say("profile.plain.dot", length.print(units))));
        return String.join(" ", sentences);
    }

    /** What it adds up to, and why it has no scale of distances if it has none. */
    private List<String> summary(Profile profile) {
        List<String> sentences = new ArrayList<>();
        sentences.add(phrases.say("profile.told", profile.size(), depth(profile)));
        profile.stops().stream()
                .filter(stop -> stop.height() > 0)
                .max(Comparator.comparingDouble(Stop::height))
                .ifPresent(stop ->
                        sentences.add(phrases.say("profile.told.highest", length(stop.height()), stop.number())));
        sentences.add(profile.known()
                .map(known -> phrases.say("profile.told.length", length(known.from()), length(known.to())))
                .orElseGet(() -> spacing(profile, "profile.even.")));
        return sentences;
    }

    /** Everything that must be said beside a picture of those stops. */
    List<String> caption(Profile profile, OptionalDouble times, List<Stop> shown, List<Stop> unnumbered) {
        List<String> sentences = new ArrayList<>();
        if (shown.size() < profile.size()) {
            sentences.add(shown(shown, profile));
        }
        if (profile.spacing() != Spacing.TO_SCALE) {
            sentences.add(spacing(profile, "profile.even."));
        }
        times.ifPresent(many -> sentences.add(times(many, "profile.scale.")));
        sentences.addAll(unknowns(profile, "profile.drawn."));
        unnumbered(unnumbered).ifPresent(sentences::add);
        level(profile, "profile.level").ifPresent(sentences::add);
        sentences.addAll(legend(places(shown)));
        return sentences;
    }

    private String shown(List<Stop> shown, Profile profile) {
        if (shown.isEmpty()) {
            return phrases.say("profile.shown.none", profile.size());
        }
        return phrases.say(
                "profile.shown",
                shown.get(0).number(),
                shown.get(shown.size() - 1).number(),
                profile.size());
    }

    /** The same in a few words. */
    List<String> brief(Profile profile, OptionalDouble times, List<Stop> unnumbered) {
        List<String> words = new ArrayList<>();
        if (profile.spacing() != Spacing.TO_SCALE) {
            words.add(phrases.say("profile.brief.even"));
        }
        times.ifPresent(many -> words.add(times(many, "profile.brief.")));
        if (!profile.withoutHeight().isEmpty()) {
            words.add(phrases.say(
                    "profile.brief.no_height",
                    profile.withoutHeight().size(),
                    profile.falls().size()));
        }
        if (profile.spacing() == Spacing.TO_SCALE && !profile.withoutDistance().isEmpty()) {
            words.add(phrases.say(
                    "profile.brief.no_distance", profile.withoutDistance().size(), profile.size()));
        }
        unnumbered(unnumbered).ifPresent(words::add);
        level(profile, "profile.brief.level").ifPresent(words::add);
        return words;
    }

    /** The picture in words, for those who do not see it. */
    String description(Profile profile, OptionalDouble times, List<Stop> unnumbered) {
        List<String> sentences = new ArrayList<>(summary(profile));
        times.ifPresent(many -> sentences.add(times(many, "profile.scale.")));
        sentences.addAll(unknowns(profile, "profile.drawn."));
        unnumbered(unnumbered).ifPresent(sentences::add);
        level(profile, "profile.level").ifPresent(sentences::add);
        sentences.addAll(legend(places(profile.stops())));
        return String.join(" ", sentences);
    }

    /** There is nothing between places where there is one. */
    private Optional<String> level(Profile profile, String key) {
        return profile.size() > 1 ? Optional.of(phrases.say(key)) : Optional.empty();
    }

    private Optional<String> unnumbered(List<Stop> stops) {
        return stops.isEmpty()
                ? Optional.empty()
                : Optional.of(phrases.say("profile.unnumbered", numbers(places(stops))));
    }

    private String depth(Profile profile) {
        boolean all = profile.withoutHeight().isEmpty();
        return phrases.say(all ? "profile.depth" : "profile.depth.least", length(profile.depth()));
    }

    /** How many heights and distances are unknown, at which places, and how that shows. */
    private List<String> unknowns(Profile profile, String keys) {
        List<String> sentences = new ArrayList<>();
        List<LineRecord> heights = profile.withoutHeight();
        if (!heights.isEmpty()) {
            sentences.add(phrases.say(
                    keys + "no_height", heights.size(), profile.falls().size(), numbers(heights)));
        }
        List<LineRecord> distances = profile.withoutDistance();
        if (profile.spacing() == Spacing.TO_SCALE && !distances.isEmpty()) {
            sentences.add(phrases.say(keys + "no_distance", distances.size(), profile.size(), numbers(distances)));
        }
        return sentences;
    }

    /** Why places are spaced as they are. */
    private String spacing(Profile profile, String keys) {
        String key = keys + profile.spacing().name().toLowerCase(Locale.ROOT);
        return profile.backwards()
                .filter(pair -> profile.spacing() == Spacing.BACKWARDS)
                .map(pair -> phrases.say(
                        key,
                        pair.get(0).number(),
                        distance(pair.get(0)),
                        pair.get(1).number(),
                        distance(pair.get(1))))
                .orElseGet(() -> phrases.say(key));
    }

    private String distance(LineRecord place) {
        return place.obstacle().distance().orElseThrow().print(units);
    }

    private String times(double many, String keys) {
        String one = keys + "same";
        if (Math.abs(many - 1) < 1e-9) {
            return phrases.say(one);
        }
        return many > 1
                ? phrases.say(keys + "heights", factor(many))
                : phrases.say(keys + "distances", factor(1 / many));
    }

    private static String factor(double times) {
        return times == Math.rint(times)
                ? Long.toString(Math.round(times))
                : String.format(Locale.ROOT, "%.1f", times).replaceFirst("\\.0$", "");
    }

    private List<String> legend(List<LineRecord> places) {
        List<String> sentences = new ArrayList<>();
        List<String> conditions = captions().conditions(places);
        if (!conditions.isEmpty()) {
            sentences.add(phrases.say("profile.conditions", String.join(", ", conditions)));
            sentences.add(phrases.say(legend + "station"));
        }
        MARKED.stream()
                .filter(kind ->
                        places.stream().anyMatch(place -> place.obstacle().kind() == kind))
                .forEach(kind -> sentences.add(phrases.say(legend + kind.name().toLowerCase(Locale.ROOT))));
        return sentences;
    }

    /**
     * Where a place is: how far along, how far down, each as far as it is known; and that its own height is not, where
     * one is asked for.
     *
     * @param index of the place, counted from 0
     */
    public String whereabouts(Profile profile, int index) {
        Stop stop = profile.stops().get(index);
        String along = stop.place()
                .obstacle()
                .distance()
                .map(distance -> phrases.say("profile.along", distance.print(units)))
                .orElseGet(() -> phrases.say("profile.along.unknown"));
        boolean all = profile.stops().subList(0, index).stream().noneMatch(one -> one.fall() == Fall.UNKNOWN);
        String down = phrases.say(all ? "profile.down" : "profile.down.least", length(stop.lip()));
        return along + ", " + down + (stop.fall() == Fall.UNKNOWN ? ", " + phrases.say("profile.height.unknown") : "");
    }

    private String numbers(List<LineRecord> places) {
        String listed = places.stream()
                .limit(MOST_NUMBERS)
                .map(place -> Integer.toString(place.number()))
                .collect(Collectors.joining(", "));
        return places.size() <= MOST_NUMBERS
                ? listed
                : phrases.say("profile.more", listed, places.size() - MOST_NUMBERS);
    }

    private static List<LineRecord> places(List<Stop> stops) {
        return stops.stream().map(Stop::place).toList();
    }

    private String length(double metres) {
        return new Length(metres).print(units);
    }
}
