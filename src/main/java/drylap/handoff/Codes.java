package drylap.handoff;

import drylap.kernel.Coded;
import org.jspecify.annotations.Nullable;

/** Codes of what may be absent. */
final class Codes {
    private Codes() {}

    static @Nullable String of(@Nullable Coded one) {
        return one == null ? null : one.code();
    }

    static <E extends Enum<E> & Coded> @Nullable E read(Class<E> type, @Nullable String code) {
        return code == null ? null : Coded.of(type, code);
    }
}
