package thalweg.sheet.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/** Where a line may break: between words and ideographs, and never within a date or between a minus and its number. */
final class LineBreaks implements FSTextBreaker {

    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    private String text = "";

    @Override
    public void setText(String newText) {
        text = newText;
        breaks.setText(newText);
    }

    @Override
    public int next() {
        int at = breaks.next();
        while (at != BreakIterator.DONE && isWithinNumber(at)) {
            at = breaks.next();
        }
        return at;
    }

    /** Digits behind a hyphen belong to what is before it. */
    private boolean isWithinNumber(int at) {
        return at > 0 && at < text.length() && text.charAt(at - 1) == '-' && Character.isDigit(text.charAt(at));
    }
}
