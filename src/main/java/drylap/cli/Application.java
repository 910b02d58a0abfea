package drylap.cli;

/** Starts the Spring application; given from outside so that headless commands never load it. */
@FunctionalInterface
public interface Application {
    /** Starts and returns while the application lives on. Each setting is written {@code --name=value}. */
    void start(String... settings);
}
