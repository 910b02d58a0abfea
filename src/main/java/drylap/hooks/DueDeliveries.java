package drylap.hooks;

import drylap.platform.RegularWork;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Executors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;

/** Sends what is due, a few at once, so that one slow program keeps no other waiting. */
@Service
final class DueDeliveries implements RegularWork {
    static final int MOST_AT_A_TIME = 20;
    private static final Logger LOG = LoggerFactory.getLogger(DueDeliveries.class);

    private final Deliveries deliveries;
    private final HookRows hooks;
    private final Outbox outbox;
    private final Sender sender;

    DueDeliveries(Deliveries deliveries, HookRows hooks, Outbox outbox, Sender sender) {
        this.deliveries = deliveries;
        this.hooks = hooks;
        this.outbox = outbox;
        this.sender = sender;
    }

    @Override
    public String name() {
        return "due-deliveries";
    }

    @Override
    public Duration pause() {
        return Duration.ofSeconds(5);
    }

    /** Ends when each of what is due was tried once. */
    @Override
    public void run() {
        List<Delivery> due = deliveries.claim(MOST_AT_A_TIME);
        if (due.isEmpty()) return;
        try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            due.forEach(one -> threads.execute(() -> send(one)));
        }
    }

    private void send(Delivery one) {
        try {
            var row = hooks.find(one.hook()).orElseThrow();
            if (!row.hook().inUse())
                deliveries.giveUp(one, TryWords.ENDED.with().words());
            else if (!outbox.mayTell(row.hook(), one.site()))
                deliveries.giveUp(one, TryWords.NOT_ALLOWED.with().words());
            else note(one, sender.send(one, row.hook().url(), row.secret()));
        } catch (RuntimeException failure) {
            // it stays claimed for a while and is then tried again
            LOG.error("Delivery {} could not be sent", one.id(), failure);
        }
    }

    private void note(Delivery one, Sender.Outcome outcome) {
        if (outcome.taken()) deliveries.delivered(one, outcome.words());
        else deliveries.failed(one, outcome.words());
    }
}
