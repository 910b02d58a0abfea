package drylap.pictures;

import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import javax.imageio.IIOException;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Bytes of a picture that end for good: a reader of WebP takes what is cut off for zeros and asks for every further byte, so that a few bytes which claim
 * to be millions of pixels would keep a processor busy for minutes.
 */
final class EndingInput extends MemoryCacheImageInputStream {
    /** Readers look a few bytes ahead. */
    private static final int MOST_BEYOND = 64;

    private int beyond;

    EndingInput(byte[] picture) {
        super(new ByteArrayInputStream(picture));
    }

    /** @throws IIOException where it was asked for too many bytes after the last */
    @Override
    public byte readByte() throws IOException {
        int next = read();
        if (next >= 0) return (byte) next;
        if (++beyond > MOST_BEYOND) throw new IIOException("the picture is cut off");
        throw new EOFException();
    }
}
