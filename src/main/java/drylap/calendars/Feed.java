package drylap.calendars;

import java.time.Instant;

/**
 * A calendar as it is sent.
 *
 * @param text iCalendar (RFC 5545), lines folded and ended by CR LF
 * @param tag the same for the same text only
 * @param changedAt when the newest of its entries changed; with none, when the link was made
 */
public record Feed(String text, String tag, Instant changedAt) {}
