package collarwright.paper;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A QR code as runs of dark modules, row by row.
 *
 * @param modules modules on a side, quiet zone not counted
 * @param runs dark modules side by side
 */
record QrCode(int modules, List<Run> runs) {

    /** Light modules that have to stay on every side. Source: ISO/IEC 18004, quiet zone of QR Code, 4 modules. */
    static final int QUIET = 4;

    private static final int MASK = 2;

    /** Keeps the list. */
    QrCode {
        runs = List.copyOf(runs);
    }

    /**
     * Dark modules side by side.
     *
     * @param row from the top, from 0
     * @param column of the first, from 0
     * @param length how many
     */
    record Run(int row, int column, int length) {}

    /**
     * Encodes a short ASCII text; level M, of which about 15 % may be spoilt (ISO/IEC 18004). All codes have one mask:
     * trying all eight took two thirds of the time of a sheet, and every reader takes any of them.
     */
    static QrCode of(String text) {
        try {
            ByteMatrix matrix = Encoder.encode(
                            text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.QR_MASK_PATTERN, MASK))
                    .getMatrix();
            List<Run> runs = new ArrayList<>();
            for (int row = 0; row < matrix.getHeight(); row++) {
                int from = -1;
                for (int column = 0; column <= matrix.getWidth(); column++) {
                    boolean dark = column < matrix.getWidth() && matrix.get(column, row) == 1;
                    if (dark && from < 0) {
                        from = column;
                    } else if (!dark && from >= 0) {
                        runs.add(new Run(row, from, column - from));
                        from = -1;
                    }
                }
            }
            return new QrCode(matrix.getWidth(), runs);
        } catch (WriterException e) {
            throw new IllegalStateException("no QR code for " + text, e);
        }
    }
}
