package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.rig.Aftermath;
import thalweg.rig.PeakRange;
import thalweg.sheet.LossWords;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/**
 * Model peaks as text to read: never without the range in which they lie, or how that is to be had.
 *
 * @param ranges as far as they have been worked out
 * @param otherwise the key of what stands for a peak whose range has not been
 */
record PeakText(Optional<PeakRange> ranges, String otherwise) {

    /** Peaks of a rig whose ranges are being worked out meanwhile. */
    static PeakText of(Optional<PeakRange> ranges) {
        return new PeakText(ranges, "rig.peaks.open");
    }

    /** Peaks of a rig that was kept, to be opened for more. */
    static PeakText ofKept() {
        return new PeakText(Optional.empty(), "rig.peaks.kept");
    }

    /** The peaks after the loss of a point. */
    List<Paragraph> lines(String lost, Aftermath after, Surroundings around) {
        if (after.peaks().isEmpty()) {
            return List.of(new Paragraph(2, around.say("rig.loss.no_peak"), Style.NORMAL));
        }
        Optional<PeakRange.Loss> range = ranges.flatMap(known -> known.after(lost));
        String said = new LossWords(around.phrases(), around.units())
                .peaks(after.peaks().get(), range, otherwise);
        List<Paragraph> text = new ArrayList<>();
        text.add(new Paragraph(2, around.say("rig.loss.peak", said), Style.NORMAL));
        if (range.filter(PeakRange.Loss::mayLieOutside).isPresent()) {
            text.add(new Paragraph(2, around.say("rig.peaks.outside"), Style.MIND));
        }
        return text;
    }
}
