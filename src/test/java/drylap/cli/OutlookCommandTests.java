package drylap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class OutlookCommandTests extends CommandLineOverAJob {
    @BeforeEach
    void makeAJob() {
        assertThat(run("generate", "--openings", "12", "--seed", "1", "--out", in("job")))
                .isZero();
        out.getBuffer().setLength(0);
    }

    private int outlook(String... more) {
        return run(Stream.concat(Stream.of("outlook", "--in", in("job"), "--years", "60"), Stream.of(more))
                .toArray(String[]::new));
    }

    @Test
    void the_outlook_is_printed_and_written() throws IOException {
        assertThat(outlook("--seed", "5", "--out", in("season")))
                .as(err.toString())
                .isZero();

        assertThat(out.toString())
                .contains("60 years, seed 5", "8 of 10", "One more window crew", "never a statement")
                .contains("Left out: water tests", "[assumed climate]");
        assertThat(Files.readAllLines(place.resolve("season/outlook_months.csv")))
                .first()
                .asString()
                .startsWith("site,facade,month,work_days,light_h,usable_h,usable_error_h");
        assertThat(Files.readAllLines(place.resolve("season/outlook_months.csv"))
                                .size()
                        % 12)
                .as("twelve months a facade, and the head")
                .isEqualTo(1);
        assertThat(place.resolve("season/outlook_facades.csv")).isNotEmptyFile();
        assertThat(place.resolve("season/outlook_one_more_crew.csv")).isNotEmptyFile();
    }

    @Test
    void the_same_seed_prints_the_same() {
        assertThat(outlook()).isZero();
        String first = out.toString();
        out.getBuffer().setLength(0);
        assertThat(outlook()).isZero();

        assertThat(out.toString()).isEqualTo(first);
    }

    @Test
    void normals_take_the_place_of_the_assumption() throws IOException {
        StringBuilder rows = new StringBuilder("month,rain_mm,rain_days,cold_days,gust_days\n");
        for (int month = 1; month <= 12; month++) rows.append(month).append(",60,12,2,\n");
        Files.writeString(place.resolve("climate.csv"), rows);

        assertThat(outlook("--climate", in("climate.csv"))).as(err.toString()).isZero();
        assertThat(out.toString()).contains("monthly normals").doesNotContain("assumed climate");
    }

    @Test
    void normals_that_cannot_be_are_refused_by_line_and_column() throws IOException {
        Files.writeString(
                place.resolve("climate.csv"),
                "month,rain_mm,rain_days,cold_days,gust_days\n2,10,3,30,\n3,10,3,,40\n4,10,3,x,1\n");

        assertThat(outlook("--climate", in("climate.csv"))).isEqualTo(2);
        assertThat(err.toString())
                .contains("climate.csv:2", "cold_days", "climate.csv:3", "gust_days", "climate.csv:4");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void crews_may_be_named_and_what_is_not_a_trade_is_refused() {
        assertThat(outlook("--crews", "window=3", "--crews", "siding=2")).isZero();
        assertThat(out.toString()).contains("window 3.00").contains("siding 2.00");
        assertThat(outlook("--crews", "roof=1")).isEqualTo(2);
        assertThat(err.toString()).contains("roof", "window");
        assertThat(outlook("--years", "3")).isEqualTo(2);
        assertThat(err.toString()).contains("years");
    }
}
