package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.CrewId;

/** Shows a link once; afterwards nobody knows it but those whom it was given to. */
final class CalendarLinkDialog extends Dialog {
    CalendarLinkDialog(CrewId crew, String address, Runnable after) {
        setHeaderTitle("Calendar of crew %s".formatted(crew));
        addClassName("calendar-link");
        var link = new Span(address);
        link.addClassName("calendar-address");
        add(
                new Paragraph(
                        "Shown now and never again. Whoever has it sees where this crew goes, without signing in: "
                                + "give it to the crew lead only, and revoke it when the phone is lost."),
                link,
                new Paragraph("On the phone, add it as a calendar by address (a subscription), not as a file: "
                        + "then changes of the plan come by themselves."));
        // without a secure connection browsers give no clipboard: then the address is marked, to be copied by hand
        var copy = new Button(
                "Copy",
                _ -> link.getElement()
                        .executeJs(
                                "getSelection().selectAllChildren(this); navigator.clipboard?.writeText($0)", address));
        var close = new Button("Done", _ -> close());
        close.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(copy, close);
        addOpenedChangeListener(event -> {
            if (!event.isOpened()) after.run();
        });
    }
}
