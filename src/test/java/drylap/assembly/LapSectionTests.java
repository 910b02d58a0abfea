package drylap.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.assembly.LapSection.Colours;
import drylap.assembly.LapSection.Layout;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class LapSectionTests {
    static final Variant A_DRAINED = new Variant(Method.A, Approach.DRAINAGE, SecondLayer.NONE);

    static List<Variant> variants() {
        return Variant.all();
    }

    static Document drawn(AsBuilt built, Layout layout) throws Exception {
        var factory = DocumentBuilderFactory.newInstance();
        return factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(LapSection.svg(built, layout).getBytes(StandardCharsets.UTF_8)));
    }

    static Stream<Element> elements(Document svg, String tag) {
        var found = svg.getElementsByTagName(tag);
        return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i));
    }

    static List<String> texts(Document svg) {
        return elements(svg, "text").map(Element::getTextContent).toList();
    }

    static Stream<Element> withClass(Document svg, String name) {
        return elements(svg, "path")
                .filter(path -> List.of(path.getAttribute("class").split(" ")).contains(name));
    }

    @ParameterizedTest
    @MethodSource("variants")
    void every_state_of_every_variant_is_drawn_with_its_rating_and_water(Variant variant) throws Exception {
        for (var step : StepOrder.of(variant).sequence()) {
            var built = AsBuilt.after(variant, step);
            var svg = drawn(built, Layout.WIDE);
            assertThat(texts(svg))
                    .contains("Head", "Sill")
                    .contains(RainCheck.of(built).rating().code());
            assertThat(withClass(svg, "water-path"))
                    .as(variant + " after " + step)
                    .hasSizeBetween(1, 3);
        }
    }

    @ParameterizedTest
    @MethodSource("variants")
    void a_reversed_lap_is_hatched_and_named(Variant variant) throws Exception {
        for (var lap :
                LapGraph.of(variant).laps().stream().filter(Lap::vertical).toList()) {
            var svg = drawn(AsBuilt.finished(variant).withReversed(List.of(lap)), Layout.WIDE);
            assertThat(withClass(svg, "lap-fault")).as(lap.words()).hasSize(1);
            assertThat(texts(svg)).contains("✕ water gets behind it");
        }
    }

    @Test
    void a_finished_opening_has_no_hatch() throws Exception {
        assertThat(withClass(drawn(AsBuilt.finished(A_DRAINED), Layout.WIDE), "lap-fault"))
                .isEmpty();
    }

    @Test
    void the_flap_and_the_apron_are_named_as_they_stand() throws Exception {
        var tuck = new Variant(Method.B1, Approach.DRAINAGE, SecondLayer.TUCK);
        assertThat(texts(drawn(AsBuilt.after(tuck, Step.HEAD_FLASHING), Layout.WIDE)))
                .contains("first barrier, flap UP", "apron, lower edge FREE");
        assertThat(texts(drawn(AsBuilt.finished(tuck), Layout.WIDE)))
                .contains("first barrier, flap down", "apron, edge held");
    }

    @Test
    void stacked_it_fits_a_phone_of_360_pixels() throws Exception {
        var svg = drawn(AsBuilt.after(A_DRAINED, Step.SET), Layout.STACKED).getDocumentElement();
        assertThat(Double.parseDouble(svg.getAttribute("viewBox").split(" ")[2]))
                .isBetween(300.0, 380.0);
    }

    /** WCAG 2.2, success criterion 1.1.1 asks for a text alternative; title and desc carry it in SVG. */
    @Test
    void its_title_and_description_tell_the_state() throws Exception {
        var svg = drawn(AsBuilt.after(A_DRAINED, Step.SET), Layout.WIDE);
        assertThat(elements(svg, "title").findFirst().orElseThrow().getTextContent())
                .contains("method A", "open to rain");
        assertThat(elements(svg, "desc").findFirst().orElseThrow().getTextContent())
                .contains("the head flange is bare", "BEHIND the jamb flange");
        var ids = svg.getDocumentElement().getAttribute("aria-labelledby").split(" ");
        assertThat(ids)
                .contains(elements(svg, "title").findFirst().orElseThrow().getAttribute("id"));
    }

    @Test
    void for_print_it_needs_no_custom_properties() {
        var svg = new LapSection(AsBuilt.finished(A_DRAINED), Layout.WIDE, Colours.PRINT).svg();
        assertThat(svg).doesNotContain("light-dark(").doesNotContain("var(--lap-paper");
    }
}
