package drylap.platform;

import org.jspecify.annotations.Nullable;

/**
 * Something changed, on whichever node. It says where to look, never what is there: whoever looks is asked for their rights.
 *
 * @param topic what kind of thing changed, such as {@code progress}
 * @param folder the job folder's number, 0 where it belongs to none
 * @param site the site, where it belongs to one
 * @param subject what changed: an opening, a plan
 */
public record NewsItem(String topic, long folder, @Nullable String site, String subject) {
    /** Told when news may have been missed: everything may have changed. */
    public static final NewsItem ANYTHING = new NewsItem("anything", 0, null, "");

    public boolean isAbout(String asked) {
        return topic.equals(asked) || this.equals(ANYTHING);
    }
}
