package drylap.papers;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.awt.Color;
import java.util.Map;

/** A QR code (ISO/IEC 18004) drawn as squares; a quarter of it may be dirty. */
final class QrCode {
    private static final int QUIET_MODULES = 4;

    private final BitMatrix squares;

    private QrCode(BitMatrix squares) {
        this.squares = squares;
    }

    /** @throws IllegalArgumentException where the text is too long for a code */
    static QrCode of(String text) {
        try {
            return new QrCode(new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.MARGIN,
                                    QUIET_MODULES,
                                    EncodeHintType.CHARACTER_SET,
                                    "UTF-8",
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.Q)));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("no code can hold %s".formatted(text), tooLong);
        }
    }

    /** Runs of dark squares are drawn as one, so that no hairline shows between them. */
    void draw(Pen pen, float x, float y, float size) {
        float square = size / squares.getWidth();
        for (int row = 0; row < squares.getHeight(); row++) {
            int from = 0;
            while (from < squares.getWidth()) {
                int until = from;
                while (until < squares.getWidth() && squares.get(until, row)) until++;
                if (until > from)
                    pen.fill(x + from * square, y + row * square, (until - from) * square, square, Color.BLACK);
                from = until + 1;
            }
        }
    }
}
