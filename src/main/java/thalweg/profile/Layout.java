package thalweg.profile;

import java.util.List;
import thalweg.units.UnitSystem;

/**
 * How the room of a picture is shared out: rows for labels, for the line and for the scales, and how large the line is.
 *
 * @param frame of the picture
 * @param heights where the scale of heights has its figures [m]; empty where nothing goes down
 */
record Layout(Frame frame, List<Double> heights) {

    private static final int MOST_SKY = 10;
    private static final int LEAST_SKY = 1;

    /** Of the rows, what labels above the line get before what is left over. */
    private static final int SKY_PART = 4;

    Layout {
        heights = List.copyOf(heights);
    }

    /**
     * The largest picture that fits.
     *
     * @param toScale whether distances are
     * @param window that is drawn
     * @param top how far down it begins [m]
     * @param depth how far it goes down from there [m]
     * @param room for all
     */
    static Layout of(boolean toScale, Window window, double top, double depth, Room room, UnitSystem units) {
        double length = window.to() - window.from();
        int sky = Math.max(LEAST_SKY, Math.min(MOST_SKY / 2, room.rows() / SKY_PART));
        double upright = Math.max(1, 2 * (room.rows() - sky - 1) - Frame.HEADROOM - Frame.FOOTROOM);
        Ticks ticks = new Ticks(units);
        List<Double> figures = depth > 0 ? ticks.down(top, top + depth, upright / depth) : List.of();
        int gutter = figures.isEmpty() ? 1 : ticks.width(figures) + 2;
        Scale scale = Scale.fitting(toScale, length, depth, room.columns() - gutter - Frame.RIGHT, upright);
        int used = (int) Math.ceil((depth * scale.down() + Frame.HEADROOM + Frame.FOOTROOM) / 2);
        int more = Math.max(0, Math.min(room.rows() - sky - used - 1, MOST_SKY - sky));
        Frame frame = new Frame(window, scale, top, gutter + 0.5, sky + more, sky + more + used + 1, room.columns());
        return new Layout(frame, depth > 0 ? ticks.down(top, top + depth, scale.down()) : List.of());
    }

    /** The same with fewer rows above the line. */
    Layout without(int rows) {
        Frame shorter = new Frame(
                frame.window(),
                frame.scale(),
                frame.top(),
                frame.left(),
                frame.sky() - rows,
                frame.rows() - rows,
                frame.columns());
        return new Layout(shorter, heights);
    }
}
