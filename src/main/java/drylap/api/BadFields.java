package drylap.api;

import java.util.List;

/** A request that cannot be read; nothing of it was done. */
final class BadFields extends RuntimeException {
    private final transient List<BadField> fields;

    BadFields(List<BadField> fields) {
        super("bad fields: " + fields);
        this.fields = List.copyOf(fields);
    }

    List<BadField> fields() {
        return fields;
    }
}
