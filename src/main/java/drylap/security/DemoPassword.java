package drylap.security;

/** The password of a person of the sample data, which the sign-in page tells everybody. */
public final class DemoPassword {
    private DemoPassword() {}

    public static String of(String signInName) {
        return "sample-" + signInName + "-of-the-harbour";
    }
}
