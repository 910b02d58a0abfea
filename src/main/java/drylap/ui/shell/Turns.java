package drylap.ui.shell;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.UIDetachedException;
import com.vaadin.flow.server.Command;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Open pages show anew what others did, a few at a time, in the order in which they were told: however many are open, half of the processors are
 * left for what people ask themselves.
 */
final class Turns {
    private static final Semaphore FREE =
            new Semaphore(Math.max(1, Runtime.getRuntime().availableProcessors() / 2), true);
    /** A page that is busy with something else does it when it can, and holds up no other. */
    private static final long BEGINS_WITHIN_MS = 200;

    private static final long ENDS_WITHIN_S = 10;

    private Turns() {}

    /** On a thread of its own, since reading takes time and news are told on one thread for all. */
    static void take(UI ui, Command show) {
        Thread.startVirtualThread(() -> {
            try {
                FREE.acquire();
                try {
                    wait(ui, show);
                } finally {
                    FREE.release();
                }
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            } catch (UIDetachedException gone) {
                // whoever left does not need it any more
            }
        });
    }

    private static void wait(UI ui, Command show) throws InterruptedException {
        var begun = new CountDownLatch(1);
        var ended = new CountDownLatch(1);
        ui.access(() -> {
            begun.countDown();
            try {
                show.execute();
            } finally {
                ended.countDown();
            }
        });
        if (begun.await(BEGINS_WITHIN_MS, TimeUnit.MILLISECONDS)) ended.await(ENDS_WITHIN_S, TimeUnit.SECONDS);
    }
}
