package drylap.load;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** What lives in another JVM's heap, after it has collected. */
final class Heap {
    private static final Pattern USED = Pattern.compile("\\bused (\\d+)K");

    private Heap() {}

    /** @return MB */
    static long used(long pid) throws IOException, InterruptedException {
        jcmd(pid, "GC.run");
        jcmd(pid, "GC.run");
        return usedIn(jcmd(pid, "GC.heap_info"));
    }

    /** The first number is that of the heap; those of classes follow. */
    static long usedIn(String info) throws IOException {
        var found = USED.matcher(info);
        if (!found.find()) throw new IOException("no size of the heap in: " + info);
        return Long.parseLong(found.group(1)) >> 10;
    }

    private static String jcmd(long pid, String what) throws IOException, InterruptedException {
        Path jcmd = Path.of(System.getProperty("java.home"), "bin", "jcmd");
        var process = new ProcessBuilder(jcmd.toString(), Long.toString(pid), what)
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said;
    }
}
