package drylap.intake.csv;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** The bytes of one file, after a byte order mark if it begins with one. */
record CsvBytes(byte[] bytes) {
    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private int begin() {
        boolean marked = bytes.length >= 3 && bytes[0] == MARK[0] && bytes[1] == MARK[1] && bytes[2] == MARK[2];
        return marked ? MARK.length : 0;
    }

    boolean blank() {
        for (int i = begin(); i < bytes.length; i++) if (!Character.isWhitespace(bytes[i])) return false;
        return true;
    }

    /** The place of the first byte that is not UTF-8, or -1. */
    int firstMalformed() {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(8192);
        while (true) {
            CoderResult result = decoder.decode(in, out.clear(), true);
            if (result.isError()) return in.position();
            if (result.isUnderflow()) return -1;
        }
    }

    int lineOf(int place) {
        int line = 1;
        for (int i = 0; i < place; i++) if (bytes[i] == '\n') line++;
        return line;
    }

    String hex(int place) {
        return "0x%02X".formatted(bytes[place] & 0xFF);
    }

    Reader reader() {
        int begin = begin();
        return new InputStreamReader(
                new ByteArrayInputStream(bytes, begin, bytes.length - begin), StandardCharsets.UTF_8);
    }
}
