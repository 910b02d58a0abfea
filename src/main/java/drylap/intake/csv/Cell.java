package drylap.intake.csv;

import drylap.intake.FolderWords;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** How dates, times and names stand in a cell; each reader answers null where the cell is something else. */
final class Cell {
    static final String TEXT = FolderWords.NAME.with();
    static final String DATE = FolderWords.DATE.with();
    static final String CLOCK = FolderWords.CLOCK.with();
    static final String INSTANT = FolderWords.INSTANT.with();
    static final String ZONE = FolderWords.ZONE.with();

    private static final int LONGEST_TEXT = 100;
    private static final Pattern DATE_SHAPE = Pattern.compile("20\\d\\d-\\d\\d-\\d\\d");
    private static final Pattern CLOCK_SHAPE = Pattern.compile("\\d\\d:\\d\\d");
    private static final Pattern INSTANT_SHAPE =
            Pattern.compile("20\\d\\d-\\d\\d-\\d\\dT\\d\\d:\\d\\d(:\\d\\d(\\.\\d{1,9})?)?(Z|[+-]\\d\\d:\\d\\d)");

    private Cell() {}

    static @Nullable String faultOfText(String value) {
        if (value.isBlank()) return FolderWords.BLANK.with();
        if (!value.strip().equals(value)) return FolderWords.SPACES.with();
        if (value.codePoints().anyMatch(Character::isISOControl)) return FolderWords.CONTROL.with();
        return value.length() > LONGEST_TEXT ? FolderWords.TOO_LONG.with() : null;
    }

    static @Nullable LocalDate date(String value) {
        if (!DATE_SHAPE.matcher(value).matches()) return null;
        try {
            return LocalDate.parse(value);
        } catch (DateTimeException e) {
            return null;
        }
    }

    static @Nullable LocalTime clock(String value) {
        if (!CLOCK_SHAPE.matcher(value).matches()) return null;
        try {
            return LocalTime.parse(value, DateTimeFormatter.ISO_LOCAL_TIME);
        } catch (DateTimeException e) {
            return null;
        }
    }

    static @Nullable Instant instant(String value) {
        if (!INSTANT_SHAPE.matcher(value).matches()) return null;
        try {
            return OffsetDateTime.parse(value).toInstant();
        } catch (DateTimeException e) {
            return null;
        }
    }

    static @Nullable ZoneId zone(String value) {
        return ZoneId.getAvailableZoneIds().contains(value) ? ZoneId.of(value) : null;
    }
}
