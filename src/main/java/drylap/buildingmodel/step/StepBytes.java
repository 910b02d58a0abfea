package drylap.buildingmodel.step;

import drylap.buildingmodel.ModelSaid;
import java.io.IOException;
import java.io.InputStream;

/** The bytes of a file, one by one, with the line that they stand in. */
final class StepBytes {
    /** Beyond the last byte. */
    static final int END = -1;

    private final InputStream in;
    private final StepLimits limits;
    private final byte[] buffer = new byte[1 << 16];
    private int at;
    private int end;
    private long total;
    private int line = 1;

    StepBytes(InputStream in, StepLimits limits) {
        this.in = in;
        this.limits = limits;
    }

    int line() {
        return line;
    }

    int peek() throws IOException, StepFault {
        if (at == end) fill();
        return end < 0 ? END : buffer[at] & 0xFF;
    }

    int next() throws IOException, StepFault {
        int one = peek();
        if (one == END) return END;
        at++;
        if (one == '\n') line++;
        return one;
    }

    private void fill() throws IOException, StepFault {
        if (end < 0) return;
        at = 0;
        end = in.read(buffer, 0, buffer.length);
        if (end < 0) {
            at = end;
            return;
        }
        total += end;
        if (total > limits.bytes())
            throw new StepFault(
                    0, 0, ModelSaid.TOO_LARGE.with(), ModelSaid.FILE_OF.with(StepLimits.mebibytes(limits.bytes())));
    }
}
