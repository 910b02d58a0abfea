package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.router.RouterLink;
import drylap.speech.Speech;
import drylap.ui.drawn.StartSheet.Step;

/** Where each step of a start page is done. */
final class StartWays {
    private StartWays() {}

    static Component of(Speech say, Step step) {
        String words = say.it(step.words());
        return switch (step) {
            case SITE, WALLS -> new RouterLink(words, OwnSitesView.class);
            case OPENINGS -> new RouterLink(words, WindowScheduleView.class);
            case CREWS -> new RouterLink(words, OwnCrewsView.class);
            case FORECAST -> new RouterLink(words, SitesView.class);
            case PLAN, PUBLISHED -> new RouterLink(words, WeekSheetView.class);
            // a screen of another package, whose class is its own
            case PLANNER, ACCOUNTS -> new Anchor("people", words);
        };
    }
}
