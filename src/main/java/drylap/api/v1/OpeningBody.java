package drylap.api.v1;

import drylap.api.BadField;
import drylap.api.BadFields;
import drylap.api.Fields;
import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.sites.Opening;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** The design of an opening as a program sends it, within the bounds of {@code openings.csv}. */
final class OpeningBody {
    private static final int HIGHEST_LEVEL = 200;
    private static final int LEAST_MM = 100;
    private static final int MOST_MM = 20_000;
    private static final int MOST_PRIORITY = 100;
    private static final int LONGEST_ID = 100;

    private OpeningBody() {}

    /** @throws BadFields with every field that cannot be read */
    static Opening read(JsonNode body, String opening) {
        List<BadField> bad = new ArrayList<>();
        if (opening.isBlank()
                || opening.length() > LONGEST_ID
                || opening.chars().anyMatch(Character::isISOControl))
            bad.add(new BadField(
                    "opening", "is no name; accepted: 1 to %d printable characters".formatted(LONGEST_ID)));
        var fields = new Fields(body, "opening", bad);
        fields.only(
                "site",
                "facade",
                "level",
                "widthMm",
                "heightMm",
                "frame",
                "method",
                "approach",
                "secondLayer",
                "deliveredOn",
                "waterTest",
                "priority");
        var read = opening(fields, opening.isBlank() ? "?" : opening);
        if (!bad.isEmpty()) throw new BadFields(bad);
        return read;
    }

    private static Opening opening(Fields fields, String opening) {
        return new Opening(
                new OpeningId(opening),
                new FacadeId(new SiteId(fields.id("site")), fields.id("facade")),
                fields.whole("level", 1, HIGHEST_LEVEL),
                fields.whole("widthMm", LEAST_MM, MOST_MM),
                fields.whole("heightMm", LEAST_MM, MOST_MM),
                fields.coded("frame", Frame.class, Frame.VINYL),
                fields.coded("method", Method.class, Method.A),
                fields.coded("approach", Approach.class, Approach.DRAINAGE),
                fields.coded("secondLayer", SecondLayer.class, SecondLayer.NONE),
                fields.date("deliveredOn"),
                fields.yes("waterTest"),
                fields.whole("priority", 0, MOST_PRIORITY),
                0,
                null);
    }

    /** What no window schedule changes may not change here either. */
    static void demandSame(Opening was, Opening asked) {
        List<BadField> bad = new ArrayList<>();
        same(bad, "site", was.facade().site(), asked.facade().site());
        same(bad, "approach", was.approach().code(), asked.approach().code());
        same(bad, "secondLayer", was.secondLayer().code(), asked.secondLayer().code());
        same(bad, "deliveredOn", was.deliveredOn(), asked.deliveredOn());
        same(bad, "waterTest", was.waterTest(), asked.waterTest());
        same(bad, "priority", was.priority(), asked.priority());
        if (!bad.isEmpty()) throw Refused.content("some of this is settled by the job folder", bad);
    }

    private static void same(List<BadField> bad, String field, Object was, Object asked) {
        if (!was.equals(asked))
            bad.add(new BadField(
                    "opening." + field, "is settled by the job folder; accepted: %s, as it is".formatted(was)));
    }
}
