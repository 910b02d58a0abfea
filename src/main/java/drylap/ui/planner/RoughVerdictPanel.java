package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.speech.Speech;
import drylap.ui.drawn.RoughSheet;

/** What a measurement comes to and why, for whoever looks at the opening. */
public final class RoughVerdictPanel extends Div {
    public RoughVerdictPanel(Speech say, RoughSheet sheet) {
        addClassName("rough-verdict");
        var title = new Span(sheet.title());
        title.addClassNames("grade", sheet.grade());
        var meaning = new Paragraph(sheet.meaning());
        meaning.addClassName("meaning");
        add(title, meaning, new Paragraph(sheet.by()));
        if (!sheet.note().isBlank()) add(new Paragraph(say.it("Note: {0}", sheet.note())));
        var findings = new UnorderedList();
        sheet.findings().forEach(one -> findings.add(finding(one)));
        add(findings);
    }

    private static ListItem finding(RoughSheet.Line one) {
        var source = new Span(one.source());
        source.addClassName("source");
        var item = new ListItem(new Span(one.words()), source);
        item.addClassName(one.grade());
        return item;
    }
}
