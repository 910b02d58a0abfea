package drylap.ui.drawn;

import drylap.kernel.FolderId;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Where a rough opening is measured. */
public final class RoughAddress {
    private RoughAddress() {}

    /** Below the address at which Drylap is reached. */
    public static String of(FolderId folder, String opening) {
        return "/rough-opening?folder=%d&opening=%s"
                .formatted(
                        folder.value(),
                        URLEncoder.encode(opening, StandardCharsets.UTF_8).replace("+", "%20"));
    }
}
