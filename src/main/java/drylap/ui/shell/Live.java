package drylap.ui.shell;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.UIDetachedException;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.NobodySignedIn;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;

/** Keeps an open screen up to date with what others do. */
public final class Live {
    private Live() {}

    /**
     * Refreshes the screen, with its page locked, soon after news of one of the topics; news that come while a refresh waits
     * are covered by it. What refreshes asks for the rights of its person again.
     */
    public static void follow(Component screen, News news, Set<String> topics, Runnable refresh) {
        screen.addAttachListener(attached -> {
            var waiting = new AtomicBoolean();
            var ui = attached.getUI();
            var subscription = news.listen(item -> {
                if (isAbout(item, topics) && waiting.compareAndSet(false, true)) hurry(ui, waiting, refresh);
            });
            screen.addDetachListener(detached -> {
                subscription.close();
                detached.unregisterListener();
            });
        });
    }

    /** Refreshes the screen every minute, where what it shows depends on the time. */
    public static void everyMinute(Component screen, Runnable refresh) {
        screen.addAttachListener(attached -> {
            var ui = attached.getUI();
            var ticking = Thread.startVirtualThread(() -> tick(ui, refresh));
            screen.addDetachListener(detached -> {
                ticking.interrupt();
                detached.unregisterListener();
            });
        });
    }

    private static void tick(UI ui, Runnable refresh) {
        try {
            while (true) {
                Thread.sleep(Duration.ofMinutes(1));
                ui.access(() -> refresh(ui, refresh));
            }
        } catch (InterruptedException | UIDetachedException gone) {
            // whoever left does not need it any more
        }
    }

    /** A page that was left open goes to the sign-in page by itself once its person was signed out. */
    private static void refresh(UI ui, Runnable refresh) {
        try {
            refresh.run();
        } catch (NobodySignedIn over) {
            ui.getPage().reload();
        }
    }

    private static boolean isAbout(NewsItem item, Set<String> topics) {
        return topics.stream().anyMatch(item::isAbout);
    }

    private static void hurry(UI ui, AtomicBoolean waiting, Runnable refresh) {
        Turns.take(ui, () -> {
            waiting.set(false);
            refresh(ui, refresh);
        });
    }
}
