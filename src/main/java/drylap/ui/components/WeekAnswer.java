package drylap.ui.components;

import com.vaadin.flow.server.streams.DownloadEvent;
import com.vaadin.flow.server.streams.DownloadHandler;
import drylap.ui.drawn.DrawnWeek;
import java.io.IOException;

/** Answers a page that fetches its week. */
final class WeekAnswer implements DownloadHandler {
    private final transient DrawnWeek week;

    WeekAnswer(DrawnWeek week) {
        this.week = week;
    }

    @Override
    public String getUrlPostfix() {
        return "week.json";
    }

    @Override
    public void handleDownloadRequest(DownloadEvent event) throws IOException {
        String accepted = event.getRequest().getHeader("Accept-Encoding");
        event.setContentType("application/json");
        event.getResponse().setHeader("Vary", "Accept-Encoding");
        if (accepted != null && accepted.contains("gzip")) {
            event.getResponse().setHeader("Content-Encoding", "gzip");
            event.setContentLength(week.packedLength());
            try (var packed = week.packed()) {
                packed.transferTo(event.getOutputStream());
            }
        } else {
            try (var plain = week.plain()) {
                plain.transferTo(event.getOutputStream());
            }
        }
    }
}
