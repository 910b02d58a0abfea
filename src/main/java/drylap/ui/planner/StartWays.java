package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.router.RouterLink;
import drylap.ui.drawn.StartSheet.Step;

/** Where each step of a start page is done. */
final class StartWays {
    private StartWays() {}

    static Component of(Step step) {
        return switch (step) {
            case SITE, WALLS -> new RouterLink(step.words(), OwnSitesView.class);
            case OPENINGS -> new RouterLink(step.words(), WindowScheduleView.class);
            case CREWS -> new RouterLink(step.words(), OwnCrewsView.class);
            case FORECAST -> new RouterLink(step.words(), SitesView.class);
            case PLAN, PUBLISHED -> new RouterLink(step.words(), WeekSheetView.class);
            // a screen of another package, whose class is its own
            case PLANNER, ACCOUNTS -> new Anchor("people", step.words());
        };
    }
}
