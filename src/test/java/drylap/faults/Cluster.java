package drylap.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A PostgreSQL, two nodes that answer and two that work, all in processes of their own. */
final class Cluster implements AutoCloseable {
    static final int WEBS = 2;
    private static final String DISK_SIZE = "700m";

    final Path home;
    final TrialPostgres postgres;
    final Wire wire;
    final List<TrialNode> webs;
    final List<TrialNode> workers;
    private final Path disk;
    private final boolean ownDisk;

    private Cluster(Path home, List<String> settings) throws IOException, InterruptedException {
        this.home = home;
        disk = Files.createDirectories(home.resolve("disk"));
        ownDisk = mount(disk);
        postgres = TrialPostgres.in(home, disk.resolve("data"), settings);
        postgres.awaitReady();
        wire = new Wire(postgres.port());
        String database = "jdbc:postgresql://127.0.0.1:%d/postgres".formatted(wire.port());
        TrialNode first = new TrialNode(true, "web1", home, database);
        first.awaitReady();
        webs = List.of(first, new TrialNode(true, "web2", home, database));
        workers = List.of(
                new TrialNode(false, "worker1", home, database), new TrialNode(false, "worker2", home, database));
        webs.forEach(TrialNode::awaitReady);
        workers.forEach(TrialNode::awaitReady);
    }

    /** @param settings of PostgreSQL, such as {@code synchronous_commit=off} */
    static Cluster start(Path home, List<String> settings) throws IOException, InterruptedException {
        return new Cluster(home, settings);
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
