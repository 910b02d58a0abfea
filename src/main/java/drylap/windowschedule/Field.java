package drylap.windowschedule;

import drylap.kernel.Coded;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a column of a window schedule may hold. The titles by which a column is recognised are common practice, no source: they are
 * compared as sets of words, so that their order and the words of, the, in and at do not matter; the first title is the surest.
 */
public enum Field implements Coded {
    MARK(
            "mark",
            "Mark",
            false,
            List.of(
                    "mark",
                    "window mark",
                    "type mark",
                    "unit mark",
                    "mark no",
                    "tag",
                    "window tag",
                    "window id",
                    "unit id",
                    "opening id",
                    "id",
                    "window no",
                    "window number",
                    "window #",
                    "no",
                    "number",
                    "#",
                    "symbol",
                    "window type",
                    "unit type",
                    "type",
                    "opening",
                    "window",
                    "key")),
    QUANTITY(
            "quantity",
            "Quantity",
            false,
            List.of(
                    "quantity",
                    "qty",
                    "count",
                    "number units",
                    "no units",
                    "number windows",
                    "no windows",
                    "pieces",
                    "pcs")),
    FRAME_WIDTH("frame-width", "Frame width", true, Titles.sides(Titles.FRAME, Titles.WIDTH)),
    FRAME_HEIGHT("frame-height", "Frame height", true, Titles.sides(Titles.FRAME, Titles.HEIGHT)),
    FRAME_SIZE("frame-size", "Frame width x height", true, Titles.sides(Titles.FRAME_PLAIN, Titles.BOTH)),
    ROUGH_WIDTH("rough-width", "Rough opening width", true, Titles.sides(Titles.ROUGH, Titles.WIDTH)),
    ROUGH_HEIGHT("rough-height", "Rough opening height", true, Titles.sides(Titles.ROUGH, Titles.HEIGHT)),
    ROUGH_SIZE("rough-size", "Rough opening width x height", true, Titles.sides(Titles.ROUGH_PLAIN, Titles.BOTH)),
    SILL_HEIGHT(
            "sill-height",
            "Sill height",
            true,
            Titles.sides(List.of("sill"), List.of("height", "ht", "hgt", "h", "aff"))),
    LEVEL("level", "Level", false, List.of("level", "floor", "floor level", "storey", "story", "lvl", "flr")),
    ELEVATION(
            "elevation",
            "Elevation",
            false,
            List.of("elevation", "facade", "elev", "face", "wall", "orientation", "side", "building side")),
    X_POSITION(
            "x-position",
            "Position along the wall",
            true,
            List.of(
                    "x position",
                    "x",
                    "x location",
                    "position along wall",
                    "position",
                    "distance left",
                    "distance from left",
                    "from left",
                    "offset")),
    MATERIAL(
            "material",
            "Material",
            false,
            List.of(
                    "material",
                    "frame material",
                    "window material",
                    "unit material",
                    "mat",
                    "matl",
                    "frame",
                    "frame type")),
    METHOD(
            "method",
            "Method",
            false,
            List.of(
                    "method",
                    "installation method",
                    "install method",
                    "lap method",
                    "flashing method",
                    "e2112 method",
                    "installation",
                    "flashing")),
    HEAD_DETAIL("head-detail", "Head detail", false, Titles.details("head")),
    JAMB_DETAIL("jamb-detail", "Jamb detail", false, Titles.details("jamb")),
    SILL_DETAIL("sill-detail", "Sill detail", false, Titles.details("sill")),
    REMARKS("remarks", "Remarks", false, List.of("remarks", "remark", "comments", "comment", "notes", "note"));

    private final String code;
    private final String words;
    private final boolean length;
    private final List<String> titles;

    Field(String code, String words, boolean length, List<String> titles) {
        this.code = code;
        this.words = words;
        this.length = length;
        this.titles = titles;
    }

    @Override
    public String code() {
        return code;
    }

    public String words() {
        return words;
    }

    /** Whether its cells are lengths, so that its column may have a unit. */
    public boolean length() {
        return length;
    }

    List<String> titles() {
        return titles;
    }

    /** A width or height of which one must be there for each row. */
    boolean size() {
        return this == FRAME_SIZE || this == ROUGH_SIZE || frameSide() || this == ROUGH_WIDTH || this == ROUGH_HEIGHT;
    }

    private boolean frameSide() {
        return this == FRAME_WIDTH || this == FRAME_HEIGHT;
    }

    public static Stream<Field> all() {
        return Arrays.stream(values());
    }

    /** The words that titles are put together from. */
    private static final class Titles {
        static final List<String> FRAME = List.of(
                "frame",
                "unit",
                "window",
                "frame size",
                "unit size",
                "window size",
                "frame dimensions",
                "unit dimensions",
                "window dimensions",
                "overall",
                "net",
                "nominal",
                "nominal size",
                "size",
                "dimensions",
                "");
        static final List<String> FRAME_PLAIN = List.of("frame", "unit", "window", "overall", "net", "nominal", "");
        static final List<String> ROUGH = List.of(
                "rough opening",
                "ro",
                "r o",
                "rough opg",
                "rough",
                "rough opening size",
                "ro size",
                "rough opening dimensions",
                "ro dimensions",
                "opening size");
        static final List<String> ROUGH_PLAIN = List.of("rough opening", "ro", "r o", "rough opg", "rough");
        static final List<String> WIDTH = List.of("width", "w", "wd", "wide");
        static final List<String> HEIGHT = List.of("height", "h", "ht", "hgt", "high");
        static final List<String> BOTH =
                List.of("size", "size w x h", "w x h", "width x height", "dimensions", "dims", "size w h", "w h");

        static List<String> sides(List<String> bases, List<String> sides) {
            return bases.stream()
                    .flatMap(base -> sides.stream().map(side -> (base + " " + side).strip()))
                    .toList();
        }

        static List<String> details(String place) {
            return sides(List.of(place), List.of("detail", "details", "det", "dtl", "")).stream()
                    .map(String::strip)
                    .toList();
        }
    }
}
