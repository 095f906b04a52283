package thalweg.qr;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;

/**
 * A text as a square of dark and light fields.
 *
 * @param size fields along an edge, without the light margin
 * @param runs of dark fields, row by row, from left to right
 * @see "ISO/IEC 18004, Information technology: QR code bar code symbology specification"
 */
public record QrCode(int size, List<Run> runs) {

    /** Light fields that must surround it on each side. Source: ISO/IEC 18004. */
    public static final int MARGIN = 4;

    /**
     * Dark fields side by side.
     *
     * @param row from above, 0 or more
     * @param from first column, 0 or more
     * @param length 1 or more
     */
    public record Run(int row, int from, int length) {}

    public QrCode {
        runs = List.copyOf(runs);
    }

    /**
     * The code of a text, of which 15 in a hundred fields may be soiled (level M).
     *
     * @param text at most a few hundred characters
     */
    public static QrCode of(String text) {
        try {
            ByteMatrix matrix = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
            List<Run> runs = new ArrayList<>();
            for (int row = 0; row < matrix.getHeight(); row++) {
                addRow(matrix, row, runs);
            }
            return new QrCode(matrix.getWidth(), runs);
        } catch (WriterException e) {
            throw new IllegalArgumentException("no code has room for this text", e);
        }
    }

    private static void addRow(ByteMatrix matrix, int row, List<Run> runs) {
        int column = 0;
        while (column < matrix.getWidth()) {
            int from = column;
            while (column < matrix.getWidth() && matrix.get(column, row) == 1) {
                column++;
            }
            if (column > from) {
                runs.add(new Run(row, from, column - from));
            }
            column++;
        }
    }
}
