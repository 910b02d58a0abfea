package drylap.ui.shell;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.Language;
import drylap.papers.Paper;
import drylap.speech.Speech;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/** Where something is to be had on paper, in either size. */
public final class PaperLinks extends Div {
    private PaperLinks(Speech say, String what, String address) {
        addClassName("papers");
        add(new Span(say.it("On paper:")), link(say, what, Paper.A4, address), link(say, what, Paper.LETTER, address));
        for (var other : Language.values()) if (other != say.language()) in(other, say, what, address);
    }

    /** Papers are given to others, who may read another language. */
    private void in(Language other, Speech say, String what, String address) {
        var theirs = new Span(other.ownName() + ":");
        theirs.getElement().setAttribute("lang", other.code());
        String inTheirs = "%s&language=%s".formatted(address, other.code());
        String called = "%s, %s".formatted(what, other.ownName());
        add(theirs, link(say, called, Paper.A4, inTheirs), link(say, called, Paper.LETTER, inTheirs));
    }

    public static PaperLinks day(Speech say, CrewId crew, LocalDate date) {
        return new PaperLinks(
                say,
                say.it("The day of crew {0} on {1}", crew, date),
                "/papers/crew-day.pdf?crew=%s&date=%s".formatted(coded(crew.value()), date));
    }

    public static PaperLinks release(Speech say, FacadeId facade, int level) {
        return new PaperLinks(
                say,
                say.it("The release of level {0}", level),
                "/papers/release.pdf?site=%s&facade=%s&level=%d"
                        .formatted(coded(facade.site().value()), coded(facade.facade()), level));
    }

    private static Anchor link(Speech say, String what, Paper paper, String address) {
        String words = paper == Paper.A4 ? "A4" : say.it("Letter");
        var link = new Anchor("%s&paper=%s".formatted(address, paper.code()), words);
        link.setTarget(AnchorTarget.BLANK);
        link.setRouterIgnore(true);
        link.setAriaLabel(say.it("{0} as a PDF, {1}", what, words));
        return link;
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
