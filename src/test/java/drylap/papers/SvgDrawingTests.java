package drylap.papers;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.assembly.AsBuilt;
import drylap.assembly.LapSection;
import drylap.assembly.StepList;
import drylap.assembly.Variant;
import drylap.speech.Speech;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The lap section of every kind of opening at every line: whatever is drawn there must be known here. */
class SvgDrawingTests {
    private static final Pattern WORDS = Pattern.compile("<text [^>]*>([^<]+)</text>");

    @Test
    void every_lap_section_is_printed_with_all_its_words() throws IOException {
        for (Variant variant : Variant.all()) {
            int last = StepList.of(variant.method(), variant.approach()).last();
            for (int line = 0; line <= last; line++) printed(AsBuilt.afterLine(variant, line));
            printed(AsBuilt.finished(variant));
        }
    }

    private static void printed(AsBuilt built) throws IOException {
        String svg = new LapSection(built, LapSection.Layout.STACKED, LapSection.Colours.PRINT).svg();
        var kind = new DaySheet.Kind("kind", "openings", svg);
        var day = new DaySheet(Speech.ENGLISH, "day", "origin", List.of(), List.of(), List.of(), List.of(kind));
        try (var document = Loader.loadPDF(CrewDayPaper.pdf(day, Paper.A4))) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            WORDS.matcher(svg)
                    .results()
                    .map(words -> words.group(1))
                    .forEach(words -> assertThat(text)
                            .contains(words.replace("&amp;", "&")
                                    .replace('✕', '×')
                                    .replaceAll("\\s+", " ")
                                    .strip()));
        }
    }
}
