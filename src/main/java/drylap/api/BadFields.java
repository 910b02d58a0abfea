package drylap.api;

import java.util.List;

/** A request that cannot be read; nothing of it was done. */
public final class BadFields extends RuntimeException {
    private final transient List<BadField> fields;

    public BadFields(List<BadField> fields) {
        super("bad fields: " + fields);
        this.fields = List.copyOf(fields);
    }

    public List<BadField> fields() {
        return fields;
    }
}
