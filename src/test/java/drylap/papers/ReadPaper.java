package drylap.papers;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Papers as other libraries read and render them. */
public final class ReadPaper {
    private static final int DPI = 200;

    private ReadPaper() {}

    record Letters(String text, List<TextPosition> positions) {}

    static Letters letters(PDDocument document, int page) throws IOException {
        List<TextPosition> positions = new ArrayList<>();
        var stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition position) {
                positions.add(position);
                super.processTextPosition(position);
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return new Letters(stripper.getText(document), positions);
    }

    public static String text(byte[] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            var stripper = new PDFTextStripper();
            // as drawn: two columns would be mixed by place
            stripper.setSortByPosition(false);
            return stripper.getText(document);
        }
    }

    public static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static TreeSet<String> codes(BufferedImage page) throws Exception {
        int[] pixels = page.getRGB(0, 0, page.getWidth(), page.getHeight(), null, 0, page.getWidth());
        var bitmap = new BinaryBitmap(
                new HybridBinarizer(new RGBLuminanceSource(page.getWidth(), page.getHeight(), pixels)));
        try {
            Result[] results = new QRCodeMultiReader().decodeMultiple(bitmap, Map.of(DecodeHintType.TRY_HARDER, true));
            var texts = new TreeSet<String>();
            Arrays.stream(results).map(Result::getText).forEach(texts::add);
            return texts;
        } catch (com.google.zxing.NotFoundException none) {
            return new TreeSet<>();
        }
    }

    /** What the codes of all pages say, as a phone would read them off the print. */
    public static List<String> codes(byte[] pdf) throws Exception {
        List<String> found = new ArrayList<>();
        try (var document = Loader.loadPDF(pdf)) {
            var renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++)
                found.addAll(codes(renderer.renderImageWithDPI(page, DPI)));
        }
        return found;
    }

    /** A letter that is cut off by the margin of its page, or none. */
    static List<String> outside(PDDocument document, int page, Paper paper) throws IOException {
        return letters(document, page).positions().stream()
                .filter(letter -> letter.getXDirAdj() < Sheet.MARGIN - 0.5f
                        || letter.getXDirAdj() + letter.getWidthDirAdj() > paper.width() - Sheet.MARGIN + 0.5f
                        || letter.getYDirAdj() - letter.getHeightDir() < Sheet.MARGIN - 0.5f
                        || letter.getYDirAdj() > paper.height() - Sheet.MARGIN + 0.5f)
                .map(letter ->
                        "%s at %.0f, %.0f".formatted(letter.getUnicode(), letter.getXDirAdj(), letter.getYDirAdj()))
                .toList();
    }
}
