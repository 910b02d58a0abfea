package drylap.ui.shell;

import com.vaadin.flow.router.HasDynamicTitle;

/** A screen that speaks each person's language. Any other is English as a whole, and the page says so. */
public interface Spoken extends HasDynamicTitle {
    /** What the page is called, without the house's name. */
    String called();

    @Override
    default String getPageTitle() {
        return called() + " · Drylap";
    }
}
