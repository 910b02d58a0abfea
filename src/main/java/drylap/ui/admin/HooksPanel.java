package drylap.ui.admin;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.component.textfield.TextField;
import drylap.handoff.ActKind;
import drylap.hooks.Deliveries;
import drylap.hooks.Hook;
import drylap.hooks.HookRequest;
import drylap.hooks.Hooks;
import drylap.speech.Speech;
import drylap.ui.drawn.ProgramLines;
import drylap.ui.shell.ShownOnce;

/** The hooks of other programs, with what they were told last. */
final class HooksPanel extends Div {
    private static final int SHOWN = 5;

    private final transient Speech say;
    private final transient ProgramsDesk desk;
    private final transient Hooks hooks;
    private final transient Deliveries deliveries;
    private final UnorderedList list = new UnorderedList();

    HooksPanel(ProgramsDesk desk, Hooks hooks, Deliveries deliveries) {
        say = desk.say();
        this.desk = desk;
        this.hooks = hooks;
        this.deliveries = deliveries;
        var head = new Div(new H2(say.it("Hooks")), new Button(say.it("Make a hook"), _ -> ask()));
        head.addClassName("head");
        list.addClassName("programs");
        addClassName("panel");
        add(
                head,
                new Paragraph(say.it(
                        "An address of another program that is told when openings are released, accepted or returned. "
                                + "What it does not take is sent again for about three days.")),
                list);
        show();
    }

    private void show() {
        list.removeAll();
        hooks.seenBy(desk.who()).stream().map(this::line).map(this::item).forEach(list::add);
        if (list.getComponentCount() == 0) list.add(new ListItem(say.it("No hook so far.")));
    }

    private ProgramLines.HookLine line(Hook hook) {
        return desk.lines().hook(hook, deliveries.of(desk.who(), hook, SHOWN));
    }

    private ListItem item(ProgramLines.HookLine line) {
        var name = new Span(line.name());
        name.addClassName("strong");
        var url = new Span(line.url());
        url.addClassName("address");
        var what = new Div(name, new Span(line.whose()), url, new Span(line.told()));
        what.addClassName("who");
        var end = new Button(say.it("End"), _ -> end(line));
        end.setAriaLabel(say.it("End hook {0}", line.name()));
        var item = new ListItem(what, end);
        if (!line.deliveries().isEmpty()) item.add(told(line));
        return item;
    }

    private static UnorderedList told(ProgramLines.HookLine line) {
        var told = new UnorderedList();
        told.addClassName("told");
        line.deliveries().forEach(one -> {
            var entry = new ListItem(one.words());
            if (one.failing()) entry.addClassName("failing");
            told.add(entry);
        });
        return told;
    }

    private void end(ProgramLines.HookLine line) {
        Notification.show(
                hooks.end(desk.who(), line.id())
                        ? say.it("Ended: \"{0}\" is told nothing any more.", line.name())
                        : say.it("It was ended meanwhile."));
        show();
    }

    private void ask() {
        var url = new TextField(say.it("Address"));
        url.setHelperText(say.it("{0}, in the public network", "https://…"));
        var kinds = new CheckboxGroup<ActKind>(say.it("Told of openings"));
        kinds.setItems(HookRequest.KINDS.stream().sorted().toList());
        kinds.setItemLabelGenerator(kind -> say.it(kind.words()));
        kinds.setValue(HookRequest.KINDS);
        var sites = new SitesField(say, desk.sites());
        var dialog = new ProgramDialog(
                say,
                say.it("A new hook"),
                say.it("of the program, such as: office system"),
                desk.people(),
                desk.who(),
                url,
                kinds,
                sites);
        dialog.onMake(() -> {
                    var made = hooks.make(
                            desk.who(),
                            new HookRequest(
                                    dialog.person().id(),
                                    dialog.name(),
                                    url.getValue(),
                                    kinds.getValue(),
                                    sites.reach()));
                    dialog.close();
                    shown(made.hook().name(), made.secret());
                })
                .open();
    }

    private void shown(String name, String secret) {
        new ShownOnce(
                        say,
                        say.it("Hook \"{0}\"", name),
                        say.it(
                                "With it the program knows what comes from here: keep it where the program keeps its passwords."),
                        secret,
                        say.it(
                                "Each message has the header {0}: HMAC-SHA-256 with this secret, in hex, over {1}, a full stop and "
                                        + "the body. {2} is the same when a message is sent again.",
                                "Drylap-Signature", "Drylap-Sent-At", "Drylap-Delivery"),
                        this::show)
                .open();
    }
}
