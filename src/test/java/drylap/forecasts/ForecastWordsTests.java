package drylap.forecasts;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.speech.SpanishWords;
import drylap.speech.Speech;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ForecastWordsTests {
    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));
    private static final String HEADER =
            "hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity\n";

    @ParameterizedTest
    @EnumSource(ForecastWords.class)
    void what_is_kept_is_read_back_as_the_same_sentence_and_said_in_another_language(ForecastWords one) {
        String kept = one.with("7", "8", "9");
        var read = ForecastWords.read(kept);
        assertThat(read.words()).isEqualTo(kept);
        assertThat(one.with("{0}", "{1}", "{2}")).isEqualTo(read.english());
        if (one != ForecastWords.LISTED) assertThat(SPANISH.it(read)).isNotEqualTo(kept);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "no gusts told, so 1.6 times the mean wind stands for them: 5 hours from Wed 25 Nov 06:00 | sin ráfagas, así que en su lugar está 1.6 veces el viento medio: 5 horas desde mié 25 nov 06:00",
                "ends at Wed 25 Nov 06:00: the next hour has no temperature, wind speed | termina mié 25 nov 06:00: a la hora siguiente le falta: temperatura, velocidad del viento",
                "no address is set for Forecast file of your own (CSV) | no hay dirección puesta para: Archivo de pronóstico propio (CSV)",
                "127.0.0.1 is asked too often (429) | 127.0.0.1 recibe demasiadas consultas (429)",
                "line 3, rain_mm: is no number (7) – a number with a point, or a blank is accepted (and 2 more) | línea 3, rain_mm: no es un número (7) – se acepta un número con punto, o en blanco (y 2 más)",
                "made elsewhere | made elsewhere"
            })
    void parts_that_are_sentences_days_or_sources_are_said_too(String kept, String spanish) {
        assertThat(SPANISH.it(ForecastWords.read(kept))).isEqualTo(spanish);
        assertThat(ForecastWords.read(kept).words()).isEqualTo(kept);
    }

    /** Of files and of answers, broken in many ways at once. */
    @Test
    void whatever_is_wrong_with_a_forecast_is_told_without_english() {
        List<ForecastReading> broken = List.of(
                read(HEADER
                        + "2026-04-13T07:00-07:00,seis,2,-1,8,400,9,80\n2026-04-13T07:20-07:00,1,0.9,5,8,40,9,80\n7\n"),
                read(HEADER + "2026-04-13T07:00-07:00,1,,,8,40,9,80\n"),
                read("hour_start,seis\n"),
                read(""),
                ForecastReader.of(ForecastSource.OPEN_METEO).read("{}".getBytes(UTF_8), Payload.QUAY),
                ForecastReader.of(ForecastSource.MET_NORWAY).read("[]".getBytes(UTF_8), Payload.QUAY),
                ForecastReader.of(ForecastSource.US_WEATHER_SERVICE)
                        .read(
                                "{\"geometry\":7,\"properties\":{\"updateTime\":\"seis\",\"windSpeed\":[]}}"
                                        .getBytes(UTF_8),
                                Payload.QUAY));
        var words = new SpanishWords(List.of(
                HEADER,
                "seis site chance_from geometry properties updateTime",
                "windSpeed quantitativePrecipitation probabilityOfPrecipitation windDirection latitude longitude",
                "hourly_units hourly CSV RFC"));
        assertThat(broken)
                .allSatisfy(one -> assertThat(((ForecastReading.Refused) one).problems())
                        .isNotEmpty()
                        .allSatisfy(
                                problem -> assertThat(words.strange(SPANISH.it(ForecastWords.read(problem.toString()))))
                                        .isEmpty()));
    }

    private static ForecastReading read(String csv) {
        return ForecastReader.of(ForecastSource.UPLOAD).read(csv.getBytes(UTF_8), Payload.QUAY);
    }
}
