package drylap.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drylap.papers.RecordSheet.Act;
import drylap.papers.RecordSheet.Fact;
import drylap.papers.RecordSheet.Photo;
import drylap.papers.RecordSheet.Row;
import drylap.pictures.Pictures;
import drylap.pictures.SamplePictures;
import drylap.speech.Speech;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The record on paper as other libraries read and render it. */
class RecordPaperTests {
    private static final String LINK = "https://drylap.example.org/record/41";

    static RecordSheet record(int openings, List<Photo> photos) {
        var day = DaySheets.of(openings);
        return new RecordSheet(
                Speech.ENGLISH,
                "Released: QW1-01, QW1-02",
                "Hand-over record 41; printed Mon 13 Apr 16:10.",
                List.of(new Fact("Where", DaySheets.ODD_SITE), new Fact("Released by", "Mara (window crew, crew W1)")),
                List.of("rough opening accepted (applies at this site)"),
                LINK,
                day.stops().stream()
                        .map(stop -> new Row(
                                stop.opening(),
                                Optional.of(stop.front()),
                                List.of(
                                        "Quay Nine, west, level 2",
                                        "R3: rain-safe by its laps alone",
                                        "head flashing on")))
                        .toList(),
                List.of(
                        new Act(
                                "Mon 13 Apr 16:00 2026",
                                "released",
                                "Mara (window crew, crew W1)",
                                "QW1-01, QW1-02",
                                true),
                        new Act("Tue 14 Apr 08:00 2026", "returned: reverse lap", "Sol (wrap crew)", "QW1-02", false)),
                day.kinds(),
                photos,
                photos.size() > 4 ? "5 of 7 photos are printed; the others are kept in Drylap." : "");
    }

    static Photo photo(String name, String words) throws Exception {
        var picture = Pictures.lookAt(SamplePictures.named(name), false);
        return new Photo(picture.thumbnail(), picture.widthPx(), picture.heightPx(), words);
    }

    private static List<Photo> photos(int count) throws Exception {
        List<Photo> photos = new ArrayList<>();
        for (int i = 0; i < count; i++)
            photos.add(photo("orientation-6.jpg", "QW1-%02d, by Mara, photo %d".formatted(i, i)));
        return photos;
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void all_that_is_recorded_can_be_read_and_nothing_is_cut_off(Paper paper) throws Exception {
        var record = record(9, photos(5));
        byte[] pdf = RecordPaper.pdf(record, paper);

        String text = ReadPaper.flat(ReadPaper.text(pdf));
        assertThat(text).contains("Hand-over record 41", ReadPaper.flat(DaySheets.ODD_SITE), "rough opening accepted");
        assertThat(text).contains("released (this record)", "returned: reverse lap", "5 of 7 photos are printed");
        record.rows().forEach(row -> assertThat(text).contains(row.opening()));
        record.photos().forEach(photo -> assertThat(text).contains(photo.words()));
        assertThat(text).contains("How the laps go", "nor a licensed inspection", "work at height is safe");
        try (var document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++)
                assertThat(ReadPaper.outside(document, page, paper))
                        .as("page %d", page)
                        .isEmpty();
        }
    }

    @Test
    void photos_are_in_the_file_in_their_shape() throws Exception {
        try (var document = Loader.loadPDF(RecordPaper.pdf(record(1, photos(3)), Paper.A4))) {
            List<String> shapes = new ArrayList<>();
            for (var page : document.getPages())
                for (COSName name : page.getResources().getXObjectNames())
                    if (page.getResources().getXObject(name) instanceof PDImageXObject image)
                        shapes.add("%d x %d".formatted(image.getWidth(), image.getHeight()));
            assertThat(shapes).isNotEmpty().containsOnly("64 x 32");
        }
    }

    @Test
    void a_record_without_photos_has_no_place_for_them() throws IOException {
        assertThat(ReadPaper.text(RecordPaper.pdf(record(2, List.of()), Paper.A4)))
                .doesNotContain("Photos");
    }

    @Test
    void the_code_opens_the_record() throws Exception {
        assertThat(ReadPaper.codes(RecordPaper.pdf(record(2, List.of()), Paper.LETTER)))
                .containsExactly(LINK);
    }

    @Test
    void what_is_no_picture_is_said() {
        var photo = new Photo(new byte[] {1, 2, 3}, 4, 3, "none");

        assertThatIllegalArgumentException().isThrownBy(() -> RecordPaper.pdf(record(1, List.of(photo)), Paper.A4));
    }
}
