package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thalweg.ledger.Uid;
import thalweg.logbook.StationRecord;
import thalweg.text.Width;
import thalweg.timeline.PartLine;
import thalweg.timeline.Timeline;
import thalweg.timeline.TimelinePicture;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.DrawingView;
import thalweg.tui.widget.ListState;
import thalweg.tui.widget.Lists;
import thalweg.tui.widget.Paragraph;

/**
 * The parts of a station over the years, with what was found on the chosen one in words.
 *
 * @param canyon in which it is
 * @param station whose parts they are
 * @param at the part that is chosen when it opens, if one is
 * @param loaded the canyon, once it is loaded
 * @param list which row is chosen
 * @param gone whether the canyon is no longer there
 */
record TimelineScreen(
        Uid canyon, Uid station, Optional<Uid> at, Optional<Told.CanyonLoaded> loaded, ListState list, boolean gone)
        implements Screen {

    /** Of the rows, what the legend and the chosen part may take each. */
    private static final int SHARE = 4;

    /** Cells at the left for the mark of the chosen row. */
    private static final int GUTTER = 2;

    /** Not loaded yet. */
    static TimelineScreen opened(Go.OverTheYears go) {
        return new TimelineScreen(go.canyon(), go.station(), go.part(), Optional.empty(), ListState.START, false);
    }

    private Optional<StationRecord> record() {
        return loaded.flatMap(told -> told.record().station(station));
    }

    private Optional<Timeline> timeline(Surroundings around) {
        return record().map(found -> Timeline.of(found.parts(), around.today()));
    }

    private List<PartLine> lines(Surroundings around) {
        return timeline(around).map(Timeline::lines).orElse(List.of());
    }

    private Optional<PartLine> chosen(Surroundings around) {
        List<PartLine> lines = lines(around);
        return lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(Math.min(list.chosen(), lines.size() - 1)));
    }

    @Override
    public String title(Surroundings around) {
        return record().map(
                        found -> around.say("timeline.title", found.station().name()))
                .orElse(around.say(waiting() ? "loading" : "gone"));
    }

    @Override
    public boolean waiting() {
        return loaded.isEmpty() && !gone;
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        String empty = around.say(waiting() ? "loading" : "timeline.none");
        int size = lines(around).size();
        List<Binding> moves = Lists.bindings(list, size, Math.max(1, around.rows() / 2), around, this::moved);
        return Stream.concat(
                        List.of(
                                Binding.of(Key.Named.ENTER, around.say("key.open"), () -> open(around))
                                        .unless(size == 0, empty),
                                Binding.of(Key.of('d'), around.say("key.in_words"), () -> read(around))
                                        .unless(size == 0, empty),
                                Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)))
                                .stream(),
                        moves.stream())
                .toList();
    }

    private Step moved(ListState to) {
        return Step.stay(new TimelineScreen(canyon, station, Optional.empty(), loaded, to, gone));
    }

    private Step open(Surroundings around) {
        return Step.open(
                this, new Go.OnePart(canyon, chosen(around).orElseThrow().part().uid()));
    }

    private Step read(Surroundings around) {
        Timeline timeline = timeline(around).orElseThrow();
        return Step.open(this, new Go.Read(title(around), List.of(Paragraph.of(timeline.told(around.phrases())))));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            return Step.stay(this).doing(new Ask.LoadCanyon(canyon));
        }
        if (message instanceof Told.CanyonLoaded told) {
            return Step.stay(loaded(told, around));
        }
        if (message instanceof Told.CanyonGone) {
            return Step.stay(new TimelineScreen(canyon, station, at, Optional.empty(), list, true));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        int size = lines(around).size();
        if (message instanceof Message.Wheel wheel) {
            return moved(list.moved(wheel.rows(), size));
        }
        if (message instanceof Message.MousePressed mouse && size > 0) {
            return pressed(mouse, around);
        }
        return Step.stay(this);
    }

    /** Keeps the chosen part chosen wherever it stands now. */
    private TimelineScreen loaded(Told.CanyonLoaded told, Surroundings around) {
        Optional<Uid> kept = chosen(around).map(line -> line.part().uid()).or(() -> at);
        TimelineScreen next = new TimelineScreen(canyon, station, kept, Optional.of(told), list, false);
        List<PartLine> lines = next.lines(around);
        int row = IntStream.range(0, lines.size())
                .filter(index -> kept.equals(Optional.of(lines.get(index).part().uid())))
                .findFirst()
                .orElse(list.chosen());
        return new TimelineScreen(canyon, station, kept, Optional.of(told), list.at(row, lines.size()), false);
    }

    private Step pressed(Message.MousePressed mouse, Surroundings around) {
        int size = lines(around).size();
        Canvas body = Canvas.of(around.rows() - 2, around.columns());
        int height = Room.of(this, body, around).parts();
        int row = list.shownIn(height, size).top() + mouse.row();
        if (mouse.row() < 0 || mouse.row() >= height || row >= size) {
            return Step.stay(this);
        }
        return row == list.chosen() ? open(around) : moved(list.at(row, size));
    }

    /**
     * How the rows are shared out.
     *
     * @param parts rows for parts
     * @param told lines about the chosen one
     * @param legend lines with the meaning of the signs
     */
    private record Room(int parts, List<String> told, List<String> legend) {

        static Room of(TimelineScreen screen, Canvas canvas, Surroundings around) {
            int width = canvas.columns() - 2;
            int most = Math.max(1, canvas.rows() / SHARE);
            List<String> told = cut(screen.told(around), width, most);
            List<String> legend = cut(screen.legend(canvas, around), width, Math.max(2, most));
            int size = screen.lines(around).size();
            int left = canvas.rows() - told.size() - 1;
            boolean fits = left - legend.size() >= Math.min(size, 3);
            int parts = Math.min(size, left - (fits ? legend.size() : 0));
            return new Room(Math.max(0, parts), told, fits ? legend : List.of());
        }

        private static List<String> cut(String text, int width, int most) {
            List<String> lines = Width.wrap(text, Math.max(1, width));
            if (lines.size() <= most) {
                return lines;
            }
            String rest = String.join(" ", lines.subList(most - 1, lines.size()));
            return Stream.concat(lines.subList(0, most - 1).stream(), Stream.of(Width.cut(rest, width)))
                    .toList();
        }
    }

    private String told(Surroundings around) {
        return "> " + chosen(around).map(line -> line.told(around.phrases())).orElse("");
    }

    private String legend(Canvas canvas, Surroundings around) {
        Timeline timeline = timeline(around).orElseThrow();
        return around.say(
                "timeline.legend",
                String.join("; ", picture(timeline, 0, 1, canvas, around).legend()));
    }

    private static TimelinePicture picture(Timeline timeline, int from, int rows, Canvas canvas, Surroundings around) {
        return TimelinePicture.of(timeline, from, rows, canvas.columns() - GUTTER - 1, around.phrases());
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        Optional<Timeline> known = timeline(around);
        if (known.isEmpty()) {
            canvas.put(1, 2, around.say(waiting() ? "loading" : "station.gone"), waiting() ? Style.FAINT : Style.ERROR);
            return;
        }
        Timeline timeline = known.get();
        boolean drawable = timeline.canBeDrawn();
        boolean room = canvas.columns() - GUTTER - 1 >= TimelinePicture.LEAST_COLUMNS && canvas.rows() >= 4;
        if (!drawable || !room) {
            String text = !drawable
                    ? around.say(timeline.lines().isEmpty() ? "timeline.none" : "timeline.no_date")
                    : around.say("timeline.no_room");
            Paragraph.draw(
                    canvas.part(0, 1, canvas.rows(), canvas.columns() - 2), List.of(Paragraph.of(text)), 0, around);
            return;
        }
        Room shared = Room.of(this, canvas, around);
        int size = timeline.lines().size();
        ListState shown = list.at(list.chosen(), size).shownIn(Math.max(1, shared.parts()), size);
        Canvas drawn = canvas.part(0, GUTTER, Math.max(3, shared.parts() + 1), canvas.columns() - GUTTER - 1);
        DrawingView.draw(
                drawn,
                picture(timeline, shown.top(), shared.parts(), canvas, around).drawing(),
                around.glyphs());
        int row = shown.chosen() - shown.top();
        canvas.put(row, 0, ">", Style.STRONG);
        canvas.cursor(row, 0);
        int at = canvas.rows() - shared.told().size() - shared.legend().size();
        for (String line : shared.told()) {
            canvas.put(at++, 1, line, Style.STRONG);
        }
        for (String line : shared.legend()) {
            canvas.put(at++, 1, line, Style.FAINT);
        }
    }
}
