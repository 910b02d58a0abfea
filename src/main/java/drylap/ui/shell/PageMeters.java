package drylap.ui.shell;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.stereotype.Component;

/** How many pages are open at this node, and how many of them can be told what changes. */
@Component
class PageMeters implements VaadinServiceInitListener {
    private final transient Set<UI> open = ConcurrentHashMap.newKeySet();

    PageMeters(MeterRegistry meters) {
        Gauge.builder("drylap.pages.open", open, Set::size).register(meters);
        Gauge.builder("drylap.push.connections", open, PageMeters::told).register(meters);
    }

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().addUIInitListener(begun -> {
            UI ui = begun.getUI();
            open.add(ui);
            ui.addDetachListener(_ -> open.remove(ui));
        });
    }

    private static double told(Set<UI> open) {
        return open.stream()
                .map(ui -> ui.getInternals().getPushConnection())
                .filter(way -> way != null && way.isConnected())
                .count();
    }
}
