package drylap.faults;

import java.time.Duration;
import java.util.List;

/** What is broken while people and programs are at work. */
enum Fault {
    WEB_KILLED("web node killed (kill -9)") {
        @Override
        Duration strike(Scene scene, int round) throws Exception {
            return scene.web(round, TrialNode::kill);
        }
    },
    WEB_STOPPED("web node asked to stop (SIGTERM)") {
        @Override
        Duration strike(Scene scene, int round) throws Exception {
            return scene.web(round, TrialNode::stop);
        }
    },
    WORKER_KILLED("worker killed while it plans (kill -9)") {
        @Override
        Duration strike(Scene scene, int round) throws Exception {
            return scene.worker(TrialNode::kill);
        }
    },
    WORKER_STOPPED("worker asked to stop while it plans (SIGTERM)") {
        @Override
        Duration strike(Scene scene, int round) throws Exception {
            return scene.worker(TrialNode::stop);
        }
    },
    DATABASE_KILLED("PostgreSQL killed, all its processes (kill -9)") {
        @Override
        Duration strike(Scene scene, int round) throws Exception {
            long begun = System.nanoTime();
            scene.cluster().postgres.kill();
            scene.cluster().postgres.start();
            return scene.untilAllConfirm(begun);
        }
    },
    DATABASE_FROZEN("PostgreSQL stopped for a while (SIGSTOP)") {
        @Override
        Duration strike(Scene scene, int round) throws Exception {
            scene.cluster().postgres.freeze();
            try {
                Thread.sleep(round % LONG_EACH == LONG_EACH - 1 ? LONG : SHORT);
            } finally {
                scene.cluster().postgres.thaw();
            }
            return scene.untilAllConfirm(System.nanoTime());
        }
    },
    DATABASE_SLOW("way to PostgreSQL slow, 100 ms each way") {
        @Override
        Duration strike(Scene scene, int round) throws Exception {
            scene.cluster().wire.slow(100);
            Thread.sleep(SHORT.multipliedBy(2));
            scene.cluster().wire.mend();
            return scene.untilAllConfirm(System.nanoTime());
        }
    },
    WIRE_CUT("way to PostgreSQL cut") {
        @Override
        Duration strike(Scene scene, int round) throws Exception {
            scene.cluster().wire.cut();
            Thread.sleep(SHORT);
            scene.cluster().wire.mend();
            return scene.untilAllConfirm(System.nanoTime());
        }
    },
    DISK_FULL("PostgreSQL's disk full") {
        @Override
        boolean possible(Scene scene) {
            return scene.cluster().hasOwnDisk();
        }

        @Override
        String needs() {
            return "the right to mount a disk";
        }

        @Override
        Duration strike(Scene scene, int round) throws Exception {
            scene.cluster().fillDisk();
            Thread.sleep(SHORT);
            scene.cluster().freeDisk();
            long begun = System.nanoTime();
            scene.cluster().revive();
            return scene.untilAllConfirm(begun);
        }
    },
    CLOCK_JUMPED("clocks of a web node and of a worker jump by an hour, then back") {
        @Override
        boolean possible(Scene scene) {
            return WrongClock.possible();
        }

        @Override
        String needs() {
            return "libfaketime (Debian: apt install libfaketime)";
        }

        @Override
        Duration strike(Scene scene, int round) throws Exception {
            return scene.clocks(round);
        }
    },
    ALL_KILLED("all of it killed at once (kill -9)") {
        @Override
        Duration strike(Scene scene, int round) throws Exception {
            long begun = System.nanoTime();
            var cluster = scene.cluster();
            for (var nodes : List.of(cluster.webs, cluster.workers)) for (TrialNode node : nodes) node.kill();
            cluster.postgres.kill();
            cluster.revive();
            return scene.untilAllConfirm(begun);
        }
    };

    private static final Duration SHORT = Duration.ofSeconds(5);
    private static final Duration LONG = Duration.ofSeconds(60);
    /** Each so many rounds the database is frozen for long. */
    private static final int LONG_EACH = 4;

    private final String words;

    Fault(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    boolean possible(Scene scene) {
        return true;
    }

    /** What a machine lacks on which it is not possible. */
    String needs() {
        return "nothing";
    }

    /** Breaks it, mends it as a service manager would, and answers how long it took until all went on. */
    abstract Duration strike(Scene scene, int round) throws Exception;
}
