package drylap.cli;

/** Starts the Spring application; given from outside so that headless commands never load it. */
@FunctionalInterface
public interface Application {
    /** What a node does of the application's work. */
    enum Node {
        /** Answers, and does work in the background unless it is told not to. */
        WEB,
        /** Does work in the background only. */
        WORKER
    }

    /** Starts and returns while the application lives on. Each setting is written {@code --name=value}. */
    void start(Node node, String... settings);
}
