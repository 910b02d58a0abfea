package drylap.fuzz;

/** What the fuzzer calls with bytes that it made up: the target named by the property {@value #TARGET}. */
public final class FuzzedReader {
    static final String TARGET = "drylap.fuzz.target";

    private static final FuzzTarget READER = FuzzTarget.of(System.getProperty(TARGET, ""));

    private FuzzedReader() {}

    /** By this name and shape the fuzzer finds it. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        READER.read(bytes);
    }
}
