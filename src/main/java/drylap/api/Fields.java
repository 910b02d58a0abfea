package drylap.api;

import drylap.kernel.Coded;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Reads the fields of a JSON object, and notes everything that is wrong before anything is done. */
public final class Fields {
    private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
    private static final Instant LATEST = Instant.parse("2100-01-01T00:00:00Z");
    private static final UUID NO_KEY = new UUID(0, 0);
    private static final int LONGEST_ID = 100;

    private final JsonNode object;
    private final String where;
    private final List<BadField> bad;

    public Fields(JsonNode object, String where, List<BadField> bad) {
        this.object = object;
        this.where = where;
        this.bad = bad;
        if (!object.isObject()) bad.add(new BadField(where, "is no JSON object"));
    }

    public UUID key(String name) {
        return read(name, "a UUID", NO_KEY, Fields::uuid);
    }

    long folder(String name) {
        return read(name, "a whole number from 1", 0L, Fields::positive);
    }

    long count(String name) {
        return read(name, "a whole number from 0", 0L, Fields::notNegative);
    }

    /** The objects of a list, each with its own place in what is told of it. */
    List<Fields> objects(String name, int most) {
        JsonNode node = object.path(name);
        List<Fields> objects = new ArrayList<>();
        if (node.isArray() && !node.isEmpty() && node.size() <= most)
            for (JsonNode one : node)
                objects.add(new Fields(one, "%s.%s[%d]".formatted(where, name, objects.size()), bad));
        else if (object.isObject()) reject(name, "is no list of 1 to %d objects".formatted(most));
        return objects;
    }

    public String id(String name) {
        return read(name, "1 to %d characters".formatted(LONGEST_ID), "?", node -> {
            String text = node.isString() ? node.stringValue() : "";
            return text.isBlank() || text.length() > LONGEST_ID || hasZero(text) || isCut(text) ? null : text;
        });
    }

    public Instant instant(String name) {
        return read(name, "a time such as 2026-04-13T19:00:00Z of the years 2000 to 2099", EARLIEST, Fields::time);
    }

    public <E extends Enum<E> & Coded> E coded(String name, Class<E> type, E otherwise) {
        return read(
                name,
                "one of " + Coded.codes(type),
                otherwise,
                node -> node.isString() ? Coded.parse(type, node.stringValue()).orElse(null) : null);
    }

    public @Nullable String text(String name, int longest) {
        JsonNode node = object.path(name);
        if (node.isMissingNode() || node.isNull()) return null;
        if (!node.isString()) reject(name, "is no text");
        else if (node.stringValue().length() > longest)
            reject(
                    name,
                    "has %d characters; accepted: up to %d"
                            .formatted(node.stringValue().length(), longest));
        else if (hasZero(node.stringValue())) reject(name, "has the character U+0000; accepted: a text without it");
        else if (isCut(node.stringValue()))
            reject(name, "has half a character (\\ud800 to \\udfff alone); accepted: whole ones");
        else return node.stringValue().isBlank() ? null : node.stringValue();
        return null;
    }

    /** JSON can write it, and PostgreSQL keeps no text with it. */
    private static boolean hasZero(String text) {
        return text.indexOf('\0') >= 0;
    }

    /** JSON can write half of a pair too, which would be kept as a question mark. */
    private static boolean isCut(String text) {
        return !StandardCharsets.UTF_8.newEncoder().canEncode(text);
    }

    List<UUID> keys(String name, int most) {
        JsonNode node = object.path(name);
        if (node.isMissingNode() || node.isNull()) return List.of();
        List<UUID> keys = new ArrayList<>();
        if (!node.isArray() || node.size() > most) {
            reject(name, "is no list of up to %d UUIDs".formatted(most));
            return keys;
        }
        for (JsonNode one : node) {
            UUID key = uuid(one);
            if (key == null) reject("%s[%d]".formatted(name, keys.size()), "is no UUID");
            keys.add(key == null ? NO_KEY : key);
        }
        return keys;
    }

    /** Names every other field as wrong: a field that is passed over may be a misspelt one. */
    public void only(String... names) {
        var known = List.of(names);
        object.propertyNames().stream()
                .filter(name -> !known.contains(name))
                .forEach(name -> reject(name, "is no field here; accepted: " + String.join(", ", known)));
    }

    public int whole(String name, int least, int most) {
        return read(name, "a whole number from %d to %d".formatted(least, most), least, node -> {
            boolean fits = node.isIntegralNumber() && node.canConvertToInt();
            return fits && node.intValue() >= least && node.intValue() <= most ? node.intValue() : null;
        });
    }

    public boolean yes(String name) {
        return read(name, "true or false", false, node -> node.isBoolean() ? node.booleanValue() : null);
    }

    public LocalDate date(String name) {
        return read(name, "a date such as 2026-04-13 of the years 2000 to 2099", LocalDate.EPOCH, Fields::day);
    }

    public void reject(String name, String problem) {
        bad.add(new BadField(where + "." + name, problem));
    }

    private <T> T read(String name, String accepted, T otherwise, Function<JsonNode, @Nullable T> reader) {
        JsonNode node = object.path(name);
        T value = node.isMissingNode() ? null : reader.apply(node);
        if (value != null) return value;
        if (object.isObject())
            reject(name, node.isMissingNode() ? "is missing; accepted: " + accepted : said(node) + accepted);
        return otherwise;
    }

    private static String said(JsonNode node) {
        String text = node.toString();
        return "is %s; accepted: ".formatted(text.length() > LONGEST_ID ? text.substring(0, LONGEST_ID) + "…" : text);
    }

    private static @Nullable UUID uuid(JsonNode node) {
        try {
            // UUID.fromString takes shorter groups as well, and one key must have one spelling.
            return node.isString() && node.stringValue().length() == 36 ? UUID.fromString(node.stringValue()) : null;
        } catch (IllegalArgumentException none) {
            return null;
        }
    }

    private static @Nullable Long positive(JsonNode node) {
        return node.isIntegralNumber() && node.canConvertToLong() && node.longValue() > 0 ? node.longValue() : null;
    }

    private static @Nullable Long notNegative(JsonNode node) {
        return node.isIntegralNumber() && node.canConvertToLong() && node.longValue() >= 0 ? node.longValue() : null;
    }

    private static @Nullable LocalDate day(JsonNode node) {
        try {
            LocalDate date = node.isString() ? LocalDate.parse(node.stringValue()) : LocalDate.EPOCH;
            return date.getYear() < 2000 || date.getYear() > 2099 ? null : date;
        } catch (DateTimeParseException none) {
            return null;
        }
    }

    private static @Nullable Instant time(JsonNode node) {
        try {
            Instant at = node.isString() ? Instant.parse(node.stringValue()) : EARLIEST.minusNanos(1);
            return at.isBefore(EARLIEST) || !at.isBefore(LATEST) ? null : at;
        } catch (DateTimeParseException none) {
            return null;
        }
    }
}
