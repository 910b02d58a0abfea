package drylap.pictures;

/**
 * A picture that was looked at.
 *
 * @param bytes as they are to be kept: the picture itself unchanged, with its colours and which side is up, and nothing behind its end
 * @param widthPx as it is seen, upright
 * @param thumbnail a JPEG of it, upright, at most {@link Pictures#THUMBNAIL_PX} on its longer side
 */
public record Picture(MediaType type, byte[] bytes, int widthPx, int heightPx, byte[] thumbnail) {}
