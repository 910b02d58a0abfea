package drylap.platform;

import java.time.Duration;

/** Short work that is due again and again; a bean of the module whose work it is. One node does it at a time. */
public interface RegularWork {
    /** Names the work in the database, so it never changes. */
    String name();

    /** From the end of one go to the begin of the next. */
    Duration pause();

    /** Does what is due by now. Jobs wait for it, so it takes seconds. */
    void run();
}
