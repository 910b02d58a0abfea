package drylap.ui.shell;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.papers.Paper;
import drylap.ui.drawn.WeekChoice;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/** Where something is to be had on paper, in either size. */
public final class PaperLinks extends Div {
    private PaperLinks(String words, String what, String address, Paper... papers) {
        addClassName("papers");
        add(new Span(words));
        for (Paper paper : papers) add(link(what, name(paper), paper, address));
    }

    private static PaperLinks inHand(String what, String address) {
        return new PaperLinks("On paper:", what, address, Paper.A4, Paper.LETTER);
    }

    private static String name(Paper paper) {
        return switch (paper) {
            case A4 -> "A4";
            case LETTER -> "Letter";
            case A3 -> "A3";
            case TABLOID -> "Tabloid, 11 × 17 in";
        };
    }

    /** What a scheduler looks at, for the wall. */
    public static PaperLinks week(FolderId folder, boolean published, WeekChoice choice) {
        var query = new StringBuilder();
        choice.parameters().forEach((name, value) -> query.append("&%s=%s".formatted(name, coded(value))));
        return new PaperLinks(
                "This week on paper:",
                "The week sheet",
                "/papers/week.pdf?folder=%d&published=%s%s".formatted(folder.value(), published, query),
                Paper.A3,
                Paper.TABLOID);
    }

    public static PaperLinks record(long id) {
        return inHand("Hand-over record %d".formatted(id), "/papers/record.pdf?id=%d".formatted(id));
    }

    public static PaperLinks day(CrewId crew, LocalDate date) {
        return inHand(
                "The day of crew %s on %s".formatted(crew, date),
                "/papers/crew-day.pdf?crew=%s&date=%s".formatted(coded(crew.value()), date));
    }

    public static PaperLinks release(FacadeId facade, int level) {
        return inHand(
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
