package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.drawing.Drawing;
import thalweg.rig.PointLoss;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigDraft;
import thalweg.rig.RigDrawing;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.DrawingView;
import thalweg.tui.widget.Paragraph;
import thalweg.units.Length;

/**
 * Draws a rig: a line above, the drawing, and the text beside it or below it.
 *
 * @param figures where the rig can be computed
 * @param view what of it is shown
 * @param draft the rig, if there is one
 */
record RigPane(Optional<RigAnswer> figures, RigView view, Optional<RigDraft> draft) {

    private static final int LEAST_ROWS_FOR_BOTH = 20;

    private boolean drawn(Surroundings around) {
        return figures.isPresent() && (around.wide() || !view.textOnly());
    }

    /** Where the text goes while the drawing is shown, and while it is not. */
    Canvas textRoom(Canvas canvas, Surroundings around) {
        if (!drawn(around)) {
            return canvas.part(1, 1, canvas.rows() - 1, canvas.columns() - 2);
        }
        if (around.wide()) {
            int width = canvas.columns() * 55 / 100;
            return canvas.part(1, width + 1, canvas.rows() - 1, canvas.columns() - width - 2);
        }
        int height = canvas.rows() * 55 / 100;
        return canvas.part(height, 1, canvas.rows() - height, canvas.columns() - 2);
    }

    /** Whether the terminal is so small that it shows either the drawing or the text. */
    static boolean oneAtATime(Surroundings around) {
        return around.rows() < LEAST_ROWS_FOR_BOTH && !around.wide();
    }

    /** Draws what fits. */
    void draw(Canvas canvas, List<Paragraph> text, Surroundings around) {
        boolean words = figures.isEmpty() || view.textOnly() || !oneAtATime(around);
        canvas.fit(0, 1, canvas.columns() - 2, headLine(around), headStyle());
        if (words) {
            Paragraph.draw(textRoom(canvas, around), text, view.top(), around);
        }
        if (drawn(around)) {
            int width = around.wide() ? canvas.columns() * 55 / 100 : canvas.columns();
            int height = around.wide() || !words ? canvas.rows() - 1 : canvas.rows() * 55 / 100 - 1;
            List<String> unplaced = DrawingView.draw(
                    canvas.part(1, 0, height, width), drawing(figures.orElseThrow(), around), around.glyphs());
            if (!unplaced.isEmpty()) {
                canvas.part(1 + height - 1, 0, 1, width)
                        .fit(0, 0, width, around.say("rig.not_drawn", String.join("; ", unplaced)), Style.CAUTION);
            }
        }
    }

    private Drawing drawing(RigAnswer answer, Surroundings around) {
        return view.loss(figures)
                .map(loss -> RigDrawing.of(answer, loss, around.units(), around.phrases()::say))
                .orElseGet(() -> RigDrawing.of(answer, view.state(answer), around.units(), around.phrases()::say));
    }

    private Style headStyle() {
        return view.loss(figures).map(LossText::style).orElse(Style.FAINT);
    }

    private static String focus(RigDraft known, Surroundings around) {
        String right = new Length(known.rig().focus().get(0)).printFine(around.units());
        String up = new Length(known.rig().focus().get(1)).printFine(around.units());
        String whole = around.say("rig.focus", right, up);
        return Width.of(whole) <= around.columns() - 2 ? whole : around.say("rig.focus_brief", right, up);
    }

    /** What the loss that is drawn comes to, what the points bear where the load is swung, or where the focus is. */
    private String headLine(Surroundings around) {
        Optional<PointLoss> loss = view.loss(figures);
        if (loss.isPresent()) {
            return LossText.headline(loss.get(), around);
        }
        if (view.swung() != 0 && figures.isPresent()) {
            return RigText.swung(view.state(figures.get()), around);
        }
        return draft.map(known -> focus(known, around)).orElse("");
    }
}
