package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import drylap.kernel.CrewId;

/** Shows a link once; afterwards nobody knows it but those whom it was given to. */
final class CalendarLinkDialog extends Dialog {
    CalendarLinkDialog(CrewId crew, String address, Runnable after) {
        setHeaderTitle("Calendar of crew %s".formatted(crew));
        addClassName("calendar-link");
        var link = new TextArea("Address of the calendar");
        link.setValue(address);
        link.setReadOnly(true);
        link.setWidthFull();
        link.getElement().setAttribute("autoselect", true);
        add(
                new Paragraph(
                        "Shown now and never again. Whoever has it sees where this crew goes, without signing in: "
                                + "give it to the crew lead only, and revoke it when the phone is lost."),
                link,
                new Paragraph("On the phone, add it as a calendar by address (a subscription), not as a file: "
                        + "then changes of the plan come by themselves."));
        var copy = new Button(
                "Copy",
                _ -> link.getElement()
                        .executeJs("navigator.clipboard ? navigator.clipboard.writeText(this.value)"
                                + " : (this.inputElement.select(), document.execCommand('copy'))"));
        var close = new Button("Done", _ -> close());
        close.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(copy, close);
        addOpenedChangeListener(event -> {
            if (!event.isOpened()) after.run();
        });
    }
}
