package drylap.ui.shell;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.Language;
import drylap.papers.Paper;
import drylap.speech.Speech;
import drylap.ui.drawn.WeekChoice;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;

/** Where something is to be had on paper, in either size. */
public final class PaperLinks extends Div {
    private static final Paper[] HAND = {Paper.A4, Paper.LETTER};
    private static final Paper[] WALL = {Paper.A3, Paper.TABLOID};

    private final transient Speech say;

    private PaperLinks(Speech say, String words, String what, String address, Paper... papers) {
        this.say = say;
        addClassName("papers");
        add(new Span(words));
        for (Paper paper : papers) add(link(what, paper, address));
        // papers are given to others, who may read another language
        for (var other : Language.values()) if (other != say.language()) in(other, what, address, papers);
    }

    private static PaperLinks inHand(Speech say, String what, String address) {
        return new PaperLinks(say, say.it("On paper:"), what, address, HAND);
    }

    private void in(Language other, String what, String address, Paper... papers) {
        var theirs = new Span(other.ownName() + ":");
        theirs.getElement().setAttribute("lang", other.code());
        String inTheirs = "%s&language=%s".formatted(address, other.code());
        String called = "%s, %s".formatted(what, other.ownName());
        add(theirs);
        for (Paper paper : papers) add(link(called, paper, inTheirs));
    }

    private String name(Paper paper) {
        return switch (paper) {
            case A4 -> "A4";
            case LETTER -> say.it("Letter");
            case A3 -> "A3";
            case TABLOID -> say.it("Tabloid, 11 × 17 in");
        };
    }

    /** What a scheduler looks at, for the wall. */
    public static PaperLinks week(Speech say, FolderId folder, boolean published, WeekChoice choice) {
        String address = "/papers/week.pdf?folder=%d&published=%s%s"
                .formatted(folder.value(), published, query(choice.parameters()));
        return new PaperLinks(say, say.it("This week on paper:"), say.it("The week sheet"), address, WALL);
    }

    /** What installs take. */
    public static PaperLinks takeOff(
            Speech say, FolderId folder, boolean published, String title, Map<String, String> of) {
        return inHand(
                say,
                say.it("The take-off of {0}", title),
                "/papers/take-off.pdf?folder=%d&published=%s%s".formatted(folder.value(), published, query(of)));
    }

    public static PaperLinks record(Speech say, long id) {
        return inHand(say, say.it("Hand-over record {0}", id), "/papers/record.pdf?id=%d".formatted(id));
    }

    public static PaperLinks day(Speech say, CrewId crew, LocalDate date) {
        return inHand(
                say,
                say.it("The day of crew {0} on {1}", crew, date),
                "/papers/crew-day.pdf?crew=%s&date=%s".formatted(coded(crew.value()), date));
    }

    public static PaperLinks release(Speech say, FacadeId facade, int level) {
        return inHand(
                say,
                say.it("The release of level {0}", level),
                "/papers/release.pdf?site=%s&facade=%s&level=%d"
                        .formatted(coded(facade.site().value()), coded(facade.facade()), level));
    }

    private Anchor link(String what, Paper paper, String address) {
        String words = name(paper);
        var link = new Anchor("%s&paper=%s".formatted(address, paper.code()), words);
        link.setTarget(AnchorTarget.BLANK);
        link.setRouterIgnore(true);
        link.setAriaLabel(say.it("{0} as a PDF, {1}", what, words));
        return link;
    }

    private static String query(Map<String, String> parameters) {
        var query = new StringBuilder();
        parameters.forEach((name, value) -> query.append("&%s=%s".formatted(name, coded(value))));
        return query.toString();
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
