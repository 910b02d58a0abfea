package drylap.ui.planner;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import drylap.kernel.GeoPoint;
import drylap.planning.SiteDraft;
import drylap.sites.PlaceText;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.TreeSet;

/** What a site is called, how it is found, where it lies and by which clock it works. */
final class PlaceFields extends Div {
    private final TextField name = new TextField();
    private final TextArea address = new TextArea();
    private final TextField place = new TextField();
    private final ComboBox<String> zone = new ComboBox<>();

    PlaceFields(Speech say) {
        addClassName("asked");
        name.setLabel(say.it("Name of the site"));
        address.setLabel(say.it("Street address, not needed"));
        place.setLabel(say.it("Place: latitude, longitude"));
        zone.setLabel(say.it("Time zone"));
        name.setHelperText(say.it("as you call it, such as {0}", "Mill Lane 4"));
        address.setHelperText(say.it("as a driver needs it, line below line; it stands on sheets and in calendars"));
        place.setHelperText(
                say.it("Most maps show two numbers where you press long or right-click on the place, such as "
                        + "47.6062, -122.3321. Copy both; south and west are negative."));
        place.setPlaceholder("47.6062, -122.3321");
        zone.setItems(new TreeSet<>(ZoneId.getAvailableZoneIds()));
        // whoever types faster than the list is fetched means what was typed, not what stood there before
        zone.setAllowCustomValue(true);
        zone.addCustomValueSetListener(event -> zone.setValue(event.getDetail().strip()));
        zone.setHelperText(say.it("suggested: that of the machine you sit at"));
        zone.setValue(here());
        add(name, address, place, zone);
    }

    /** The browser's, or else the server's. */
    private static String here() {
        String server = ZoneId.systemDefault().getId();
        UI ui = UI.getCurrent();
        if (ui == null) return server;
        var details = ui.getPage().getExtendedClientDetails();
        String browser = details == null ? null : details.getTimeZoneId();
        return browser != null && ZoneId.getAvailableZoneIds().contains(browser) ? browser : server;
    }

    void show(Site site) {
        name.setValue(site.name());
        address.setValue(site.address().below());
        place.setValue(PlaceText.of(site.place()));
        zone.setValue(site.zone().getId());
    }

    void focus() {
        name.focus();
    }

    SiteDraft read() throws WrongField {
        return new SiteDraft(name.getValue(), address.getValue(), place(place), zone());
    }

    static GeoPoint place(TextField field) throws WrongField {
        return PlaceText.read(field.getValue())
                .orElseThrow(() -> new WrongField(
                        field.getLabel(),
                        field.isEmpty() ? Saying.of("is blank") : Saying.of("''{0}'' is no place", field.getValue()),
                        Saying.of("accepted: {0}", Saying.of(PlaceText.ACCEPTED))));
    }

    private ZoneId zone() throws WrongField {
        String chosen = zone.getValue();
        try {
            if (chosen != null) return ZoneId.of(chosen);
        } catch (DateTimeException unknown) {
            // told below
        }
        throw new WrongField(
                zone.getLabel(),
                chosen == null ? Saying.of("is blank") : Saying.of("''{0}'' is no time zone", chosen),
                Saying.of("accepted: one of the list; type a town to find it"));
    }
}
