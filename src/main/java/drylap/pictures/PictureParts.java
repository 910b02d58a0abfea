package drylap.pictures;

/** A picture file taken apart. */
sealed interface PictureParts permits JpegParts, PngParts, WebpParts {
    Orientation orientation();

    /** The file again, without what is not the picture. */
    byte[] written(boolean keepExif);
}
