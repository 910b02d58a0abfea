package drylap.security;

/** The code of the first account, for tests, which read no console. */
public final class FirstCode {
    private FirstCode() {}

    public static String of(FirstUse first) {
        return first.code();
    }
}
