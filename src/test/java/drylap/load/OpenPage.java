package drylap.load;

import java.io.IOException;
import java.net.http.WebSocket;
import java.util.Optional;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * A Vaadin page as a browser opens it: the address, the first state, the way to the screen, then a socket on which the server tells
 * what changes. Nothing is drawn.
 */
final class OpenPage {
    private static final String GUARD = "for(;;);";
    private static final Pattern WEEK = Pattern.compile("VAADIN/dynamic/resource/[^\"]*/week\\.json");
    private static final Pattern SYNC = Pattern.compile("\"syncId\":\\s*(\\d+)");
    private static final String DETAILS =
            "&v-sh=900&v-sw=1440&v-wh=900&v-ww=1440&v-bh=900&v-bw=1440&v-tzo=0&v-rtzo=0&v-dston=false&v-tzid=UTC&v-wn=load&v-td=false&v-pr=1";

    private final Browser browser;
    private final String key;
    private final String push;
    private final int ui;
    private final AtomicInteger syncId = new AtomicInteger();
    private int clientId;
    private @Nullable WebSocket socket;
    private volatile boolean lost;
    private String shown = "";

    private OpenPage(Browser browser, JsonNode config) throws IOException {
        this.browser = browser;
        ui = config.path("v-uiId").intValue(-1);
        JsonNode state = config.path("uidl");
        key = state.path("Vaadin-Security-Key").asString("");
        push = state.path("Vaadin-Push-ID").asString("");
        syncId.set(state.path("syncId").intValue(0));
        if (ui < 0 || key.isEmpty()) throw new IOException("the page's first state is none");
    }

    /** @return with the screen's content, as the server tells it */
    static OpenPage at(Browser browser, String route, String query) throws IOException, InterruptedException {
        browser.get("/" + route + (query.isEmpty() ? "" : "?" + query)).good();
        String init = "/?v-r=init&location=%s&query=%s%s".formatted(route, Browser.encoded(query), DETAILS);
        var page = new OpenPage(browser, browser.get(init).good().json().path("appConfig"));
        page.shown = page.go(route, query);
        return page;
    }

    private String go(String route, String query) throws IOException, InterruptedException {
        String told = tell(
                "{\"type\":\"event\",\"node\":1,\"event\":\"ui-navigate\",\"data\":{\"route\":\"%s\",\"query\":\"%s\",\"appShellTitle\":\"Drylap\",\"historyState\":{\"idx\":0},\"trigger\":\"\"}}"
                        .formatted(route, query),
                "");
        if (!told.contains("serverConnected")) throw new IOException("the screen " + route + " was not shown");
        return told;
    }

    private synchronized String tell(String rpc, String more) throws IOException, InterruptedException {
        String message = "{\"csrfToken\":\"%s\",\"rpc\":[%s],\"syncId\":%d,\"clientId\":%d%s}"
                .formatted(key, rpc, syncId.get(), clientId++, more);
        String body = browser.tell("/?v-r=uidl&v-uiId=" + ui, message).good().body();
        if (body.startsWith(GUARD)) {
            JsonNode answer =
                    Browser.JSON.readTree(body.substring(GUARD.length())).path(0);
            if (answer.path("meta").has("appError") || answer.path("meta").has("sessionExpired"))
                throw new IOException("the page broke: " + answer.path("meta"));
            heard(answer.path("syncId").intValue(0));
        }
        return body;
    }

    private void heard(int number) {
        syncId.accumulateAndGet(number, Math::max);
    }

    /** From now on everything that the server pushes is told. */
    OpenPage follow(Consumer<String> listener) throws IOException {
        String path = "/VAADIN/push?v-r=push&v-uiId=%d&v-pushId=%s".formatted(ui, push)
                + "&X-Atmosphere-tracking-id=0&X-Atmosphere-Framework=3.1.5-javascript&X-Atmosphere-Transport=websocket"
                + "&X-Atmosphere-TrackMessageSize=true&Content-Type=application/json%3B%20charset%3DUTF-8&X-atmo-protocol=true";
        socket = browser.socket(path, new Ear(listener));
        return this;
    }

    /** What the server told when the screen was first shown. */
    String shown() {
        return shown;
    }

    /** The address of the week that a message tells of; nothing where it tells of none. */
    static Optional<String> week(String message) {
        var found = WEEK.matcher(message);
        return found.find() ? Optional.of("/" + found.group()) : Optional.empty();
    }

    boolean lost() {
        return lost;
    }

    /** As a browser that leaves: the server need not keep the page. */
    void leave() throws IOException, InterruptedException {
        tell("", ",\"UNLOAD\":true");
        if (socket != null) socket.abort();
    }

    private final class Ear implements WebSocket.Listener {
        private final Consumer<String> listener;
        private final StringBuilder part = new StringBuilder();

        Ear(Consumer<String> listener) {
            this.listener = listener;
        }

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket one, CharSequence data, boolean last) {
            part.append(data);
            if (last) {
                String message = part.toString();
                part.setLength(0);
                noted(message);
                listener.accept(message);
            }
            one.request(1);
            return null;
        }

        private void noted(String message) {
            int at = message.indexOf(GUARD);
            if (at < 0) return;
            var sync = SYNC.matcher(message);
            if (sync.find(at)) heard(Integer.parseInt(sync.group(1)));
        }

        @Override
        public @Nullable CompletionStage<?> onClose(WebSocket one, int status, String why) {
            lost = true;
            return null;
        }

        @Override
        public void onError(WebSocket one, Throwable failure) {
            lost = true;
        }
    }
}
