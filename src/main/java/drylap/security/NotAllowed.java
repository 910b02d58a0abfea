package drylap.security;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Someone asked for what is not theirs; the message says so without telling whether it exists. Each is logged, by the person's number: whoever
 * tries what they may not shows in one place, whichever way they came.
 */
public final class NotAllowed extends RuntimeException {
    private static final Logger LOG = LoggerFactory.getLogger(NotAllowed.class);

    public NotAllowed(Person who, Operation operation, String where) {
        super("person %d (%s) may not %s %s"
                .formatted(
                        who.id().value(),
                        who.role().words(),
                        operation.words(),
                        // part of it may be what somebody typed
                        where.replaceAll("\\p{Cntrl}", "?")));
        LOG.warn("Refused: {}", getMessage());
    }
}
