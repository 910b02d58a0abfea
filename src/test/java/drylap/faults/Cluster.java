package drylap.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A PostgreSQL, nodes that answer and nodes that work, all in processes of their own. */
final class Cluster implements AutoCloseable {
    static final int WEBS = 2;
    private static final int WORKERS = 2;
    private static final String DISK_SIZE = "700m";

    final Path home;
    final TrialPostgres postgres;
    final Wire wire;
    final List<TrialNode> webs;
    final List<TrialNode> workers;
    private final Path disk;
    private final boolean ownDisk;

    /**
     * @param webs how many nodes only answer
     * @param workers how many only work
     * @param java what the nodes' virtual machines are told
     * @param postgres settings
     */
    record Layout(int webs, int workers, List<String> java, List<String> postgres) {
        Layout {
            if (webs < 1 || workers < 1) throw new IllegalArgumentException("a cluster answers and works");
        }
    }

    private Cluster(Path home, Layout layout) throws IOException, InterruptedException {
        this.home = home;
        disk = Files.createDirectories(home.resolve("disk"));
        ownDisk = mount(disk);
        postgres = TrialPostgres.in(home, disk.resolve("data"), layout.postgres());
        postgres.awaitReady();
        wire = new Wire(postgres.port());
        String database = "jdbc:postgresql://127.0.0.1:%d/postgres".formatted(wire.port());
        webs = new ArrayList<>();
        workers = new ArrayList<>();
        for (int node = 1; node <= layout.webs(); node++) {
            webs.add(new TrialNode(true, "web" + node, home, database, layout.java()));
            if (node == 1) webs.getFirst().awaitReady(); // it makes the tables
        }
        for (int node = 1; node <= layout.workers(); node++)
            workers.add(new TrialNode(false, "worker" + node, home, database, layout.java()));
        awaitReady();
    }

    /** @param settings of PostgreSQL, such as {@code synchronous_commit=off} */
    static Cluster start(Path home, List<String> settings) throws IOException, InterruptedException {
        return start(home, new Layout(WEBS, WORKERS, TrialNode.BRIEF, settings));
    }

    static Cluster start(Path home, Layout layout) throws IOException, InterruptedException {
        return new Cluster(home, layout);
    }

    /** A disk of its own that can be filled; without the right to mount one there is none, and nothing is filled. */
    private static boolean mount(Path where) throws IOException, InterruptedException {
        if (!System.getProperty("user.name").equals("root")) return false;
        var mount = new ProcessBuilder("mount", "-t", "tmpfs", "-o", "size=" + DISK_SIZE, "tmpfs", where.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        return mount.waitFor() == 0;
    }

    boolean hasOwnDisk() {
        return ownDisk;
    }

    /** Writes until nothing more can be written. */
    void fillDisk() throws IOException {
        byte[] much = new byte[1 << 16];
        try (var out = Files.newOutputStream(ballast())) {
            while (true) out.write(much);
        } catch (IOException full) {
            if (!String.valueOf(full.getMessage()).contains("space")) throw full;
        }
    }

    void freeDisk() throws IOException {
        Files.deleteIfExists(ballast());
    }

    private Path ballast() {
        return disk.resolve("ballast");
    }

    /** What a service manager does: whatever has ended is started again. */
    void revive() throws IOException {
        if (!postgres.isRunning()) postgres.start();
        postgres.awaitReady();
        for (TrialNode web : webs) if (!web.isRunning()) web.start();
        for (TrialNode worker : workers) if (!worker.isRunning()) worker.start();
    }

    void awaitReady() {
        webs.forEach(TrialNode::awaitReady);
        workers.forEach(TrialNode::awaitReady);
    }

    TrialNode workerOf(long pid) {
        return workers.stream().filter(one -> one.pid() == pid).findFirst().orElseThrow();
    }

    /** However the trial ends, nothing that it started goes on running. */
    static void endAll(Path home) {
        List<ProcessHandle> all = ProcessHandle.current().descendants().toList();
        all.forEach(ProcessHandle::destroyForcibly);
        try {
            for (ProcessHandle one : all) one.onExit().get(20, TimeUnit.SECONDS);
            new ProcessBuilder("umount", home.resolve("disk").toString())
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start()
                    .waitFor();
        } catch (Exception failure) {
            System.err.println("something of the trial may still run: " + failure);
        }
    }

    @Override
    public void close() throws IOException {
        wire.close();
        endAll(home);
    }
}
