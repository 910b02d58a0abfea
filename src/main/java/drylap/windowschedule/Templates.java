package drylap.windowschedule;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;

/** Empty window schedules to begin with, and how their rows look. */
public final class Templates {
    private static final String PLACE = "/window-schedule/";

    private Templates() {}

    /** @param type the media type */
    public record Template(String name, String type, byte[] bytes) {}

    public static List<Template> all() {
        return List.of(
                read("window-schedule.xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
                read("window-schedule.csv", "text/csv"));
    }

    private static Template read(String name, String type) {
        try (InputStream in = Templates.class.getResourceAsStream(PLACE + name)) {
            return new Template(name, type, Objects.requireNonNull(in, name).readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
