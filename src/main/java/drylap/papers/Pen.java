package drylap.papers;

import java.awt.Color;
import java.io.IOException;
import org.openpdf.text.Image;
import org.openpdf.text.pdf.PdfContentByte;

/** Draws on a page whose origin is its upper left corner. */
final class Pen {
    private final PdfContentByte page;
    private final float height;

    Pen(PdfContentByte page, float height) {
        this.page = page;
        this.height = height;
    }

    /** @param y the baseline */
    void text(float x, float y, Style style, String words) {
        page.beginText();
        page.setFontAndSize(style.font().font(), style.size());
        page.setColorFill(style.colour());
        page.setTextMatrix(x, height - y);
        page.showText(style.font().printable(words));
        page.endText();
    }

    void fill(float x, float y, float w, float h, Color colour) {
        page.setColorFill(colour);
        page.rectangle(x, height - y - h, w, h);
        page.fill();
    }

    void box(float x, float y, float w, float h, float width, Color colour) {
        stroke(width, colour);
        page.rectangle(x, height - y - h, w, h);
        page.stroke();
    }

    void dashedBox(float x, float y, float w, float h, float width, Color colour) {
        page.setLineDash(2, 2, 0);
        box(x, y, w, h, width, colour);
        page.setLineDash(0);
    }

    void line(float width, Color colour, float... points) {
        trace(points);
        stroke(width, colour);
        page.stroke();
    }

    void dashedLine(float on, float off, float width, Color colour, float... points) {
        page.setLineDash(on, off, 0);
        line(width, colour, points);
        page.setLineDash(0);
    }

    void polygon(Color colour, float... points) {
        page.setColorFill(colour);
        trace(points);
        page.closePath();
        page.fill();
    }

    void circle(float x, float y, float radius, Color colour) {
        page.setColorFill(colour);
        page.circle(x, height - y, radius);
        page.fill();
    }

    /** @throws IllegalArgumentException where the bytes are no JPEG */
    void jpeg(float x, float y, float w, float h, byte[] bytes) {
        try {
            page.addImage(Image.getInstance(bytes), w, 0, 0, h, x, height - y - h);
        } catch (IOException unreadable) {
            throw new IllegalArgumentException("this is no picture", unreadable);
        }
    }

    /** Slanting lines over a rectangle, {@code step} apart, rising to the right or falling. */
    void hatch(float x, float y, float w, float h, float step, boolean rising, float width, Color colour) {
        page.saveState();
        page.rectangle(x, height - y - h, w, h);
        page.clip();
        page.newPath();
        for (float at = x - h; at < x + w; at += step)
            line(width, colour, at, rising ? y + h : y, at + h, rising ? y : y + h);
        page.restoreState();
    }

    private void trace(float... points) {
        page.moveTo(points[0], height - points[1]);
        for (int i = 2; i < points.length; i += 2) page.lineTo(points[i], height - points[i + 1]);
    }

    private void stroke(float width, Color colour) {
        page.setLineWidth(width);
        page.setColorStroke(colour);
    }
}
