package drylap.ui.drawn;

import drylap.kernel.FolderId;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Where the steps of an opening are: a page of its own, which opens without a connection. */
public final class StepsAddress {
    private StepsAddress() {}

    /** Below the address at which Drylap is reached. */
    public static String of(FolderId folder, String opening) {
        return "/crew/steps.html#%d/%s"
                .formatted(
                        folder.value(),
                        URLEncoder.encode(opening, StandardCharsets.UTF_8).replace("+", "%20"));
    }
}
