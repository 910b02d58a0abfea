package drylap.platform;

import static org.jooq.impl.DSL.function;
import static org.jooq.impl.DSL.inline;
import static org.jooq.impl.DSL.val;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import tools.jackson.databind.json.JsonMapper;

/** What changes on one node is told on all: PostgreSQL's NOTIFY carries it, and it arrives only once it is committed. */
@Service
public final class News {
    static final String CHANNEL = "drylap_news";
    private static final Logger LOG = LoggerFactory.getLogger(News.class);
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final DSLContext db;
    private final List<Consumer<NewsItem>> listeners = new CopyOnWriteArrayList<>();

    News(DSLContext db) {
        this.db = db;
    }

    /** Joins the caller's transaction: no commit, no news. */
    public void tell(NewsItem item) {
        db.select(function("pg_notify", String.class, inline(CHANNEL), val(JSON.writeValueAsString(item))))
                .fetch();
    }

    /**
     * Tells the listener every item of news of every node, on one thread for all: it must be quick, and hand over what takes
     * time. Close what is returned to be told no more.
     */
    public Subscription listen(Consumer<NewsItem> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    void heard(String payload) {
        spread(JSON.readValue(payload, NewsItem.class));
    }

    void missed() {
        spread(NewsItem.ANYTHING);
    }

    private void spread(NewsItem item) {
        for (var listener : listeners) {
            try {
                listener.accept(item);
            } catch (RuntimeException failure) {
                LOG.warn("A listener failed on news of {}", item.topic(), failure);
            }
        }
    }
}
