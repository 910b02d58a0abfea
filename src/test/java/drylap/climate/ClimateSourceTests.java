package drylap.climate;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.speech.Speech;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ClimateSourceTests {
    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));

    @ParameterizedTest
    @EnumSource(ClimateSource.class)
    void where_a_climate_comes_from_is_read_back_and_said_in_another_language(ClimateSource one) {
        String kept = one.with(7);
        var read = ClimateSource.read(kept);
        assertThat(read.words()).isEqualTo(kept);
        assertThat(SPANISH.it(read)).isNotEqualTo(kept);
    }

    @ParameterizedTest
    @CsvSource({"0, monthly normals", "1, in 1 month", "2, in 2 months"})
    void months_without_normals_are_counted(int lacking, String said) {
        assertThat(ClimateSource.lacking(lacking).with(lacking)).endsWith(said);
    }

    @Test
    void other_words_stay_as_they_are() {
        assertThat(SPANISH.it(ClimateSource.read("by an almanac"))).isEqualTo("by an almanac");
    }
}
