package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.profile.Profile;
import thalweg.profile.ProfileLines;
import thalweg.profile.ProfilePicture;
import thalweg.text.Width;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/**
 * The profile of a canyon: the line as it goes down, and the chosen place or station told below.
 *
 * @param canyon whose it is
 * @param loaded the canyon, once it is loaded
 * @param chosen the place without stations or the station, if one was named
 * @param times how many such parts as are shown make the whole line: 1 shows all
 */
record ProfileScreen(Uid canyon, Optional<Told.CanyonLoaded> loaded, Optional<Uid> chosen, int times)
        implements Screen {

    private static final int MOST_TIMES = 32;

    /** Places that page keys go on by. */
    private static final int PAGE = 5;

    /** From so many rows on, the chosen place is told at some length. */
    private static final int ROOMY = 18;

    /** Not loaded yet. */
    static ProfileScreen opened(Go.CanyonProfile go) {
        return new ProfileScreen(go.canyon(), Optional.empty(), go.at(), 1);
    }

    /** Where one can stand: at each station, and at each place without one. */
    private record Stand(LineRecord place, Optional<StationRecord> station) {

        Uid uid() {
            return station.map(one -> one.station().uid())
                    .orElse(place.obstacle().uid());
        }

        boolean is(Uid uid) {
            return uid().equals(uid) || place.obstacle().uid().equals(uid);
        }
    }

    private List<Stand> stands() {
        List<Stand> stands = new ArrayList<>();
        loaded.ifPresent(told -> told.record().line().forEach(place -> {
            if (place.stations().isEmpty()) {
                stands.add(new Stand(place, Optional.empty()));
            }
            place.stations().forEach(station -> stands.add(new Stand(place, Optional.of(station))));
        }));
        return stands;
    }

    /** Which of them is chosen; the first where what was named is no longer there. */
    private static int at(List<Stand> stands, Optional<Uid> chosen) {
        return chosen.stream()
                .flatMapToInt(uid -> IntStream.range(0, stands.size())
                        .filter(index -> stands.get(index).is(uid)))
                .findFirst()
                .orElse(0);
    }

    private Optional<Stand> stand() {
        List<Stand> stands = stands();
        return stands.isEmpty() ? Optional.empty() : Optional.of(stands.get(at(stands, chosen)));
    }

    private CanyonRecord record() {
        return loaded.orElseThrow().record();
    }

    @Override
    public String title(Surroundings around) {
        return loaded.map(told -> told.record().canyon())
                .map(known -> around.say(
                        "profile.title",
                        known.invented() ? known.name() + " " + around.say("canyons.invented") : known.name()))
                .orElse(around.say("loading"));
    }

    @Override
    public boolean waiting() {
        return loaded.isEmpty();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        boolean none = stand().isEmpty();
        String empty = loaded.isEmpty() ? around.say("loading") : around.say("profile.none.empty");
        boolean whole = times == 1;
        return List.of(
                Binding.of(Key.Named.ENTER, around.say("key.open"), () -> open(around))
                        .unless(none, empty),
                move(Key.Named.RIGHT, "key.next_place", 1, around)
                        .or(Key.of(Key.Named.DOWN), Key.of('j'), Key.of('l'))
                        .unless(none, empty),
                Binding.of(Key.of('+'), around.say("key.closer"), () -> closer(2 * times))
                        .or(Key.of('='))
                        .unless(times >= MOST_TIMES, around.say("profile.closest")),
                Binding.of(Key.of('-'), around.say("key.farther"), () -> closer(times / 2))
                        .unless(whole, around.say("profile.farthest")),
                Binding.of(Key.of('d'), around.say("key.in_words"), () -> read(around))
                        .unless(none, empty),
                Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)),
                move(Key.Named.LEFT, "key.previous_place", -1, around)
                        .or(Key.of(Key.Named.UP), Key.of('k'), Key.of('h'))
                        .unless(none, empty),
                Binding.of(Key.of('0'), around.say("key.whole_line"), () -> closer(1))
                        .unless(whole, around.say("profile.farthest"))
                        .quiet(),
                move(Key.Named.PAGE_DOWN, "key.page_down", PAGE, around)
                        .unless(none, empty)
                        .quiet(),
                move(Key.Named.PAGE_UP, "key.page_up", -PAGE, around)
                        .unless(none, empty)
                        .quiet(),
                move(Key.Named.HOME, "key.first", -stands().size(), around)
                        .unless(none, empty)
                        .quiet(),
                move(Key.Named.END, "key.last", stands().size(), around)
                        .unless(none, empty)
                        .quiet());
    }

    private Binding move(Key.Named key, String label, int by, Surroundings around) {
        return Binding.of(key, around.say(label), () -> moved(by));
    }

    private Step moved(int by) {
        List<Stand> stands = stands();
        int to = Math.max(0, Math.min(stands.size() - 1, at(stands, chosen) + by));
        return Step.stay(
                new ProfileScreen(canyon, loaded, Optional.of(stands.get(to).uid()), times));
    }

    private Step closer(int to) {
        return Step.stay(new ProfileScreen(canyon, loaded, chosen, to));
    }

    private Step open(Surroundings around) {
        Stand stand = stand().orElseThrow();
        return stand.station()
                .map(station -> Step.open(
                        this, new Go.OneStation(canyon, station.station().uid())))
                .orElseGet(() -> Step.open(
                        this, new Go.Read(About.placeName(stand.place(), around), About.place(stand.place(), around))));
    }

    private Step read(Surroundings around) {
        Profile profile = Profile.of(record());
        List<Paragraph> text = new ArrayList<>();
        if (profile.canBeDrawn()) {
            ProfileLines.of(profile, ProfilePane.words(around)).forEach(line -> text.add(Paragraph.of(line)));
            text.add(Paragraph.gap());
            picture(Canvas.of(around.rows() - 2, around.columns()), around)
                    .ifPresent(picture -> picture.caption().forEach(line -> text.add(Paragraph.of(line))));
        } else {
            text.add(Paragraph.of(ProfilePane.words(around).refusal(profile), Style.CAUTION));
            record().line().forEach(place -> text.add(Paragraph.of(told(profile, place, around))));
        }
        return Step.open(this, new Go.Read(title(around), text));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            return Step.stay(this).doing(new Ask.LoadCanyon(canyon));
        }
        if (message instanceof Told.CanyonLoaded told) {
            return Step.stay(new ProfileScreen(canyon, Optional.of(told), chosen, times));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (message instanceof Message.Wheel wheel && stand().isPresent()) {
            return moved(wheel.rows());
        }
        if (message instanceof Message.MousePressed mouse && stand().isPresent()) {
            return pressed(mouse.column() - 1, around);
        }
        return Step.stay(this);
    }

    /** The place next to that column is chosen; on the chosen one, it is opened. */
    private Step pressed(int column, Surroundings around) {
        Stand before = stand().orElseThrow();
        return picture(Canvas.of(around.rows() - 2, around.columns()), around)
                .flatMap(picture -> picture.nearest(column))
                .map(index -> record().line().get(index))
                .map(place -> place.equals(before.place())
                        ? open(around)
                        : Step.stay(new ProfileScreen(
                                canyon, loaded, Optional.of(place.obstacle().uid()), times)))
                .orElseGet(() -> Step.stay(this));
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (loaded.isEmpty()) {
            canvas.put(1, 2, around.say("loading"), Style.FAINT);
            return;
        }
        Profile profile = Profile.of(record());
        if (!profile.canBeDrawn()) {
            Paragraph.draw(
                    canvas.part(1, 2, canvas.rows() - 1, canvas.columns() - 4),
                    List.of(Paragraph.of(ProfilePane.words(around).refusal(profile))),
                    0,
                    around);
        } else {
            picture(canvas, around);
        }
        List<String> lines = told(canvas, around);
        for (int i = 0; i < lines.size(); i++) {
            canvas.put(canvas.rows() - lines.size() + i, 1, lines.get(i), Style.STRONG);
        }
    }

    private Optional<ProfilePicture> picture(Canvas canvas, Surroundings around) {
        Profile profile = Profile.of(record());
        int rows = canvas.rows() - told(canvas, around).size();
        return stand().filter(stand -> profile.canBeDrawn())
                .flatMap(stand -> ProfilePane.draw(
                        canvas.part(0, 1, rows, canvas.columns() - 2),
                        profile,
                        stand.place().number() - 1,
                        times,
                        around));
    }

    /** The chosen place, in a few rows below the picture. */
    private List<String> told(Canvas canvas, Surroundings around) {
        int most = canvas.rows() >= ROOMY ? 3 : 2;
        List<String> lines = stand().map(stand -> Width.wrap(
                        "> " + told(Profile.of(record()), stand.place(), around) + stationTold(stand, around),
                        canvas.columns() - 2))
                .orElse(List.of());
        return lines.subList(0, Math.min(most, lines.size()));
    }

    private static String told(Profile profile, LineRecord place, Surroundings around) {
        return around.labelled(
                About.placeName(place, around), ProfilePane.words(around).whereabouts(profile, place.number() - 1));
    }

    private static String stationTold(Stand stand, Surroundings around) {
        if (stand.station().isEmpty()) {
            return stand.place().obstacle().kind().usuallyRigged() ? "; " + around.say("canyon.no_station") : "";
        }
        StationRecord station = stand.station().get();
        String seen = station.oldestLook()
                .map(date -> ", " + around.say("profile.oldest", Looks.ago(around, date)))
                .orElse("");
        return "; "
                + around.say(
                        "profile.station",
                        station.station().name(),
                        ConditionWords.told(station.standing(), around.phrases()) + DueMark.of(station, around) + seen);
    }
}
