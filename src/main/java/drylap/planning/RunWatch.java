package drylap.planning;

import drylap.kernel.FolderId;
import drylap.platform.Subscription;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Service;

/** Looks into the database for everybody who watches a run, because the run may be at work on another node. */
@Service
final class RunWatch implements DisposableBean {
    private static final Logger LOG = LoggerFactory.getLogger(RunWatch.class);
    private static final long LOOK_EVERY_MS = 250;

    private final PlanningRuns runs;
    private final List<Watcher> watchers = new CopyOnWriteArrayList<>();
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(
            Thread.ofPlatform().name("planning-watch").daemon().factory());

    RunWatch(PlanningRuns runs) {
        this.runs = runs;
        thread.scheduleWithFixedDelay(this::look, LOOK_EVERY_MS, LOOK_EVERY_MS, TimeUnit.MILLISECONDS);
    }

    Subscription add(FolderId folder, Consumer<RunState> listener) {
        Watcher watcher = new Watcher(folder, listener);
        watchers.add(watcher);
        return () -> watchers.remove(watcher);
    }

    private void look() {
        if (watchers.isEmpty()) return;
        try {
            Map<FolderId, RunState> states =
                    runs.newest(watchers.stream().map(watcher -> watcher.folder).collect(Collectors.toSet()));
            watchers.forEach(watcher -> tell(watcher, states.get(watcher.folder)));
        } catch (RuntimeException failure) {
            LOG.warn("Planning runs cannot be watched for the moment: {}", failure.getMessage());
        }
    }

    private void tell(Watcher watcher, @Nullable RunState state) {
        if (state == null || state.equals(watcher.told)) return;
        watcher.told = state;
        try {
            watcher.listener.accept(state);
        } catch (RuntimeException failure) {
            watchers.remove(watcher);
            LOG.warn("A watcher of job folder {} failed and is told no more", watcher.folder.value(), failure);
        }
    }

    @Override
    public void destroy() {
        thread.shutdownNow();
    }

    /** Only the watching thread touches {@code told}. */
    private static final class Watcher {
        private final FolderId folder;
        private final Consumer<RunState> listener;
        private @Nullable RunState told;

        Watcher(FolderId folder, Consumer<RunState> listener) {
            this.folder = folder;
            this.listener = listener;
        }
    }
}
