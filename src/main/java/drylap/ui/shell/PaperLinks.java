package drylap.ui.shell;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.papers.Paper;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/** Where something is to be had on paper, in either size. */
public final class PaperLinks extends Div {
    private PaperLinks(String what, String address) {
        addClassName("papers");
        add(new Span("On paper:"), link(what, "A4", Paper.A4, address), link(what, "Letter", Paper.LETTER, address));
    }

    public static PaperLinks day(CrewId crew, LocalDate date) {
        return new PaperLinks(
                "The day of crew %s on %s".formatted(crew, date),
                "/papers/crew-day.pdf?crew=%s&date=%s".formatted(coded(crew.value()), date));
    }

    public static PaperLinks release(FacadeId facade, int level) {
        return new PaperLinks(
                "The release of level %d".formatted(level),
                "/papers/release.pdf?site=%s&facade=%s&level=%d"
                        .formatted(coded(facade.site().value()), coded(facade.facade()), level));
    }

    private static Anchor link(String what, String words, Paper paper, String address) {
        var link = new Anchor("%s&paper=%s".formatted(address, paper.code()), words);
        link.setTarget(AnchorTarget.BLANK);
        link.setRouterIgnore(true);
        link.setAriaLabel("%s as a PDF, %s".formatted(what, words));
        return link;
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
