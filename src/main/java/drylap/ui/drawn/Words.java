package drylap.ui.drawn;

import drylap.assembly.Approach;
import drylap.assembly.Method;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.sites.Facade;
import drylap.sites.Opening;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** The trade's words for what the records hold as codes and numbers. */
public final class Words {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final String[] COMPASS = {
        "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"
    };

    private Words() {}

    public static String clock(Instant instant, ZoneId zone) {
        return CLOCK.format(instant.atZone(zone));
    }

    public static String weekday(LocalDate date) {
        return WEEKDAY.format(date);
    }

    public static String date(LocalDate date) {
        return DATE.format(date);
    }

    /** Such as "Tue 14 Apr 09:30". */
    public static String moment(Instant instant, ZoneId zone) {
        LocalDate date = instant.atZone(zone).toLocalDate();
        return "%s %s %s".formatted(weekday(date), date(date), clock(instant, zone));
    }

    /** With a thin space between the thousands. */
    public static String number(long value) {
        return String.format(Locale.ROOT, "%,d", value).replace(',', '\u2009');
    }

    /** Signed, so that more and less are told apart without colour. */
    public static String difference(long value) {
        if (value == 0) return "as before";
        return (value > 0 ? "+" : "\u2212") + number(Math.abs(value));
    }

    public static String task(Task task) {
        return switch (task) {
            case INSTALL -> "Install";
            case TEST -> "Water test";
            case WRAP -> "Wrap";
            case CLAD -> "Clad";
        };
    }

    public static String crewOf(Trade trade) {
        return switch (trade) {
            case WINDOW -> "window crew";
            case TESTER -> "water testers";
            case WRAP -> "wrap crew";
            case SIDING -> "siding crew";
        };
    }

    /** The letter alone says too little, and some trade guides use it for something else. */
    public static String method(Method method) {
        return "method %s: barrier %s the window, jamb flashing %s the flange"
                .formatted(
                        method.code(),
                        method.barrierFirst() ? "before" : "after",
                        method.jambFlashingBehindFlange() ? "behind" : "over");
    }

    public static String approach(Approach approach) {
        return switch (approach) {
            case DRAINAGE -> "sill pan that drains";
            case BARRIER -> "sealed on all four sides, no pan";
        };
    }

    /** What a crew needs to know of an opening before it gets there. */
    public static String work(Task task, Opening opening) {
        String size = "%d × %d mm".formatted(opening.widthMm(), opening.heightMm());
        return switch (task) {
            case INSTALL -> "%s, %s".formatted(size, method(opening.method()));
            case TEST -> size + ", before anything covers the laps";
            case WRAP ->
                switch (opening.secondLayer()) {
                    case NONE -> size + ", first barrier tucked under the apron";
                    case TUCK -> size + ", second barrier tucked under the apron";
                    case DRAIN_BETWEEN -> size + ", second barrier, drains between the layers";
                };
            case CLAD -> size;
        };
    }

    public static String heading(Facade facade) {
        int eighth = Math.floorMod(Math.round((float) facade.azimuthDeg() / 45), 8);
        return "faces %s, %d°".formatted(COMPASS[eighth], Math.round(facade.azimuthDeg()));
    }
}
