package drylap.calendars;

/**
 * A link that was just made.
 *
 * @param secret told here and never again
 */
public record NewLink(CalendarLink link, String secret) {
    /** Where the calendar is, below the address at which Drylap is reached. */
    public String path() {
        return "/calendar/%s.ics".formatted(secret);
    }
}
