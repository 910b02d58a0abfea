package drylap.platform;

import org.jooq.Condition;
import org.jooq.Field;

/** Whoever refers to stored files is a bean of this kind, so that none of theirs is thrown away. */
public interface FileUse {
    /** True for digests to which a row refers. */
    Condition uses(Field<String> digest);
}
