package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.RouterLink;
import drylap.handoff.HandoffResult;
import drylap.handoff.HoldPoint;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.HandoverSheet;
import drylap.ui.followon.Notice;
import drylap.ui.followon.RecordView;
import drylap.ui.followon.RecordsView;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** In whose hands the opening is, what stands before its release, and what was done so far. */
final class HandoverPanel extends Div {
    static final Set<String> TOPICS = Set.of("progress", "handoff", "rule");

    private final transient HandoverDesk desk;
    private final transient SignedIn signedIn;
    private final transient Speech say;
    private final Notice notice;
    private final Div body = new Div();
    private transient @Nullable FolderId folder;
    private transient @Nullable OpeningId opening;
    private transient @Nullable HandoverSheet shown;

    HandoverPanel(HandoverDesk desk, SignedIn signedIn) {
        this.desk = desk;
        this.signedIn = signedIn;
        say = new Speech(signedIn.reading());
        notice = new Notice(say, this::refresh);
        addClassName("handover");
        add(notice, body);
    }

    void show(FolderId of, OpeningId one) {
        if (!one.equals(opening)) notice.setVisible(false);
        folder = of;
        opening = one;
        shown = null;
        refresh();
    }

    void refresh() {
        if (folder == null || opening == null) return;
        var who = signedIn.find().filter(one -> one.may(Operation.SEE_WALLS)).orElse(null);
        var now = who == null ? null : desk.sheet(who, folder, opening).orElse(null);
        if (now != null && now.equals(shown)) return;
        shown = now;
        body.removeAll();
        if (who != null && now != null) fill(now, who, opening);
    }

    private void fill(HandoverSheet sheet, Person who, OpeningId one) {
        var panel = Panels.panel("handover-panel", say.it("Hand-over of {0}", one));
        panel.add(Panels.text(sheet.hand(), "strong"), list(sheet.state()));
        if (!sheet.against().isEmpty()) panel.add(new H3(say.it("Before it may be released")), list(sheet.against()));
        else if (who.may(Operation.RELEASE)) panel.add(release(sheet, one));
        if (!sheet.holds().isEmpty()) panel.add(new H3(say.it("Hold points")), holds(sheet, who));
        if (!sheet.acts().isEmpty()) panel.add(new H3(say.it("Last acts")), acts(sheet));
        panel.add(records(one));
        body.add(panel);
    }

    private Button release(HandoverSheet sheet, OpeningId one) {
        var release = new Button(
                say.it("Release to the next trade"),
                _ -> act(folder -> desk.release(signedIn.person(), folder, sheet.seen(), UUID.randomUUID())));
        release.setAriaLabel("%s: %s".formatted(release.getText(), one));
        release.setDisableOnClick(true);
        return release;
    }

    private UnorderedList holds(HandoverSheet sheet, Person who) {
        var list = new UnorderedList();
        for (var hold : sheet.holds()) {
            var item = new ListItem(hold.words());
            if (!hold.passed() && hold.point() != HoldPoint.SPOT_TEST && who.may(Operation.PASS_HOLD_POINT))
                item.add(pass(sheet, hold));
            list.add(item);
        }
        return list;
    }

    private Button pass(HandoverSheet sheet, HandoverSheet.Hold hold) {
        var pass = new Button(
                say.it("Passed"),
                _ -> act(
                        folder -> desk.pass(signedIn.person(), folder, sheet.seen(), UUID.randomUUID(), hold.point())));
        pass.setAriaLabel(say.it("Passed: {0}", Saying.of(hold.point().words())));
        pass.setDisableOnClick(true);
        return pass;
    }

    private void act(java.util.function.Function<FolderId, HandoffResult> deed) {
        if (folder == null) return;
        notice.say(deed.apply(folder));
        shown = null;
        refresh();
    }

    private static UnorderedList acts(HandoverSheet sheet) {
        var list = new UnorderedList();
        sheet.acts().forEach(act -> {
            var link = new RouterLink();
            link.setText(act.words());
            link.setRoute(RecordView.class, act.record());
            list.add(new ListItem(link));
        });
        return list;
    }

    private Paragraph records(OpeningId one) {
        var link = new RouterLink(say.it("All its hand-over records"), RecordsView.class);
        link.setQueryParameters(QueryParameters.of(RecordsView.OPENING, one.value()));
        return new Paragraph(link);
    }

    private static UnorderedList list(List<String> lines) {
        return new UnorderedList(lines.stream().map(ListItem::new).toArray(ListItem[]::new));
    }
}
