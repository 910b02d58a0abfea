package drylap.papers;

import drylap.kernel.Caution;
import drylap.speech.Speech;
import java.io.ByteArrayOutputStream;
import java.util.function.Consumer;
import org.openpdf.text.Document;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfWriter;

/** Pages filled from above, each with the same head and foot. What does not fit goes to the next page whole. */
final class Sheet {
    static final float MARGIN = 36;
    private static final float FOOT = 34;

    private final Document document;
    private final PdfWriter writer;
    private final Paper paper;
    private final Speech say;
    private final String title;
    private final String origin;
    private final int total;
    private final Pen pen;
    private int page;
    private float y;
    private float top;

    private Sheet(ByteArrayOutputStream out, Paper paper, Speech say, String title, String origin, int total) {
        this.paper = paper;
        this.say = say;
        this.title = title;
        this.origin = origin;
        this.total = total;
        document = new Document(new Rectangle(paper.width(), paper.height()), 0, 0, 0, 0);
        writer = PdfWriter.getInstance(document, out);
        document.addTitle(title);
        document.addCreator("Drylap");
        document.setDocumentLanguage(say.language().code());
        document.open();
        pen = new Pen(writer.getDirectContent(), paper.height());
        begin();
    }

    /** Laid out twice, since only the first time tells how many pages there are. */
    static byte[] pdf(Paper paper, Speech say, String title, String origin, Consumer<Sheet> content) {
        int pages = write(new ByteArrayOutputStream(), paper, say, title, origin, 0, content);
        var out = new ByteArrayOutputStream();
        write(out, paper, say, title, origin, pages, content);
        return out.toByteArray();
    }

    private static int write(
            ByteArrayOutputStream out,
            Paper paper,
            Speech say,
            String title,
            String origin,
            int total,
            Consumer<Sheet> content) {
        var sheet = new Sheet(out, paper, say, title, origin, total);
        content.accept(sheet);
        sheet.document.close();
        return sheet.page;
    }

    Pen pen() {
        return pen;
    }

    float x() {
        return MARGIN;
    }

    float width() {
        return paper.width() - 2 * MARGIN;
    }

    /** Where the next thing begins. */
    float y() {
        return y;
    }

    /** How much fits below. */
    float room() {
        return paper.height() - MARGIN - FOOT - y;
    }

    void down(float by) {
        y += by;
    }

    /** Goes to the next page where there is no room left for so much. */
    void need(float height) {
        if (height > room()) next();
    }

    void next() {
        document.newPage();
        begin();
    }

    /** How much fits on a page that nothing is on yet. */
    float emptyRoom() {
        return paper.height() - MARGIN - FOOT - top;
    }

    int page() {
        return page;
    }

    /** Lines of words beside one another with others; answers where they end. */
    float lines(Style style, String words, float x, float from, float width) {
        float at = from;
        for (String line : style.wrap(words, width)) {
            pen.text(x, at + style.size(), style, line);
            at += style.leading();
        }
        return at;
    }

    /** A paragraph over the width of the page. */
    void paragraph(Style style, String words) {
        paragraph(style, words, width());
    }

    void paragraph(Style style, String words, float width) {
        for (String line : style.wrap(words, width)) {
            need(style.leading());
            pen.text(MARGIN, y + style.size(), style, line);
            y += style.leading();
        }
    }

    void heading(String words) {
        float height = Style.HEAD.height(words, width());
        need(height + 40);
        y += 8;
        paragraph(Style.HEAD, words);
        y += 2;
    }

    private void begin() {
        writer.setPageEmpty(false);
        page++;
        y = MARGIN;
        for (String line : Style.TITLE.wrap(title, width())) {
            pen.text(MARGIN, y + Style.TITLE.size(), Style.TITLE, line);
            y += Style.TITLE.leading();
        }
        paragraph(Style.SMALL, origin);
        pen.line(1.2f, Style.INK, MARGIN, y + 3, MARGIN + width(), y + 3);
        y += 10;
        top = y;
        foot();
    }

    private void foot() {
        String number = say.it("page {0} of {1}", page, total);
        float numberWidth = Style.SMALL.font().width(number, Style.SMALL.size());
        float at = paper.height() - MARGIN - FOOT + 10;
        pen.line(0.6f, Style.INK, MARGIN, at, MARGIN + width(), at);
        at += 2;
        for (String line : Style.SMALL.wrap(say.it(Caution.WORDS), width() - 90)) {
            pen.text(MARGIN, at + Style.SMALL.size(), Style.SMALL, line);
            at += Style.SMALL.leading();
        }
        pen.text(
                MARGIN + width() - numberWidth,
                paper.height() - MARGIN - FOOT + 12 + Style.SMALL.size(),
                Style.SMALL,
                number);
    }
}
