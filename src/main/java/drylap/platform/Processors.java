package drylap.platform;

/** Shares the machine out between pages and what goes on behind them. */
public final class Processors {
    private Processors() {}

    /** For work in the background: one is left to pages, where there are two. */
    public static int forBackgroundWork() {
        return Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
    }
}
