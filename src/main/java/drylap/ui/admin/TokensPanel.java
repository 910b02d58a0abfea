package drylap.ui.admin;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.component.select.Select;
import drylap.speech.Speech;
import drylap.tokens.ApiTokens;
import drylap.tokens.Scope;
import drylap.tokens.TokenRequest;
import drylap.ui.drawn.ProgramLines;
import drylap.ui.shell.ShownOnce;
import java.time.Duration;
import java.util.EnumSet;
import java.util.stream.Stream;

/** The tokens of other programs: made, shown once, revoked. */
final class TokensPanel extends Div {
    private static final int USUAL_DAYS = 90;

    private final transient Speech say;
    private final transient ProgramsDesk desk;
    private final transient ApiTokens tokens;
    private final UnorderedList list = new UnorderedList();

    TokensPanel(ProgramsDesk desk, ApiTokens tokens) {
        say = desk.say();
        this.desk = desk;
        this.tokens = tokens;
        var make = new Button(say.it("Make a token"), _ -> ask());
        make.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        var head = new Div(new H2(say.it("Tokens")), make);
        head.addClassName("head");
        list.addClassName("programs");
        addClassName("panel");
        add(
                head,
                new Paragraph(say.it(
                        "A program shows a token in place of a password. It may what its person may, narrowed to what "
                                + "you choose, and never more.")),
                list);
        show();
    }

    private void show() {
        list.removeAll();
        tokens.seenBy(desk.who()).stream()
                .map(desk.lines()::token)
                .map(this::item)
                .forEach(list::add);
        if (list.getComponentCount() == 0) list.add(new ListItem(say.it("No token so far.")));
    }

    private ListItem item(ProgramLines.TokenLine line) {
        var name = new Span(line.name());
        name.addClassName("strong");
        var what = new Div(name, new Span(line.whose()), new Span(line.may()), new Span(line.times()));
        what.addClassName("who");
        var item = new ListItem(what);
        if (line.ended() != null) {
            var ended = new Span(line.ended());
            ended.addClassName("note");
            what.addComponentAtIndex(1, ended);
            return item;
        }
        var revoke = new Button(say.it("Revoke"), _ -> revoke(line));
        revoke.setAriaLabel(say.it("Revoke token {0}", line.name()));
        item.add(revoke);
        return item;
    }

    private void revoke(ProgramLines.TokenLine line) {
        Notification.show(
                tokens.revoke(desk.who(), line.id())
                        ? say.it("Revoked: \"{0}\" opens nothing any more.", line.name())
                        : say.it("It was revoked meanwhile."));
        show();
    }

    private void ask() {
        var scopes = new CheckboxGroup<Scope>(say.it("May"));
        scopes.setItems(Scope.values());
        scopes.setItemLabelGenerator(scope -> say.it(scope.words()));
        scopes.setValue(EnumSet.of(Scope.READ));
        scopes.setItemEnabledProvider(scope -> scope != Scope.READ);
        var days = new Select<Integer>();
        days.setLabel(say.it("Ends after"));
        days.setItems(Stream.of(30, USUAL_DAYS, 180, 365).toList());
        days.setItemLabelGenerator(many -> say.it("{0} days", many));
        days.setValue(USUAL_DAYS);
        var sites = new SitesField(say, desk.sites());
        var dialog = new ProgramDialog(
                say,
                say.it("A new token"),
                say.it("of the program, such as: office system"),
                desk.people(),
                desk.who(),
                scopes,
                sites,
                days);
        dialog.onMake(() -> {
                    var scoped = EnumSet.of(Scope.READ);
                    scoped.addAll(scopes.getValue());
                    var ends = desk.now().plus(Duration.ofDays(days.getValue()));
                    var made = tokens.make(
                            desk.who(),
                            new TokenRequest(dialog.person().id(), dialog.name(), scoped, sites.reach(), ends));
                    dialog.close();
                    shown(made.token().name(), made.secret());
                })
                .open();
    }

    private void shown(String name, String secret) {
        new ShownOnce(
                        say,
                        say.it("Token \"{0}\"", name),
                        say.it("Whoever has it acts for the person: keep it where the program keeps its passwords."),
                        secret,
                        say.it(
                                "The program sends it with every request, as: {0}, then the token. What there is to ask stands at {1}.",
                                "Authorization: Bearer", "/api/v1/openapi.json"),
                        this::show)
                .open();
    }
}
