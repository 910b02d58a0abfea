package drylap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One opening, two crews, one dry day: an install of 60 minutes and a cladding of 50, each after 30 minutes of set-up. */
class CheckCommandTests {
    private static final String VISITS = """
            crew,date,sequence,site,facade,level,opening,task,start,end
            S1,2026-04-13,1,quay,N,1,Q1,clad,2026-04-13T08:30-07:00,2026-04-13T09:20-07:00
            W1,2026-04-13,1,quay,N,1,Q1,install,2026-04-13T07:30-07:00,2026-04-13T08:30-07:00
            """;
    private static final String LEDGER = """
            term,amount,weight,cost
            late_handover,0,200,0
            crew_days,2,400,800
            travel,0,2,0
            setup,60,1,60
            overtime,0,3,0
            open_course,1,5,5
            rain_risk,80,2,160
            changed,0,50,0
            hard,,,0
            medium,,,0
            soft,,,1025
            """;

    @TempDir
    Path folder;

    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    @BeforeEach
    void job_and_plan() throws IOException {
        write("in", "sites.csv", """
                site,name,latitude,longitude,time_zone
                quay,Quay,49.28,-123.12,America/Vancouver
                """);
        write("in", "facades.csv", "site,facade,azimuth_deg\nquay,N,0\n");
        write("in", "openings.csv", """
                site,facade,level,opening,width_mm,height_mm,frame,method,approach,second_layer,delivered_on
                quay,N,1,Q1,1000,1500,vinyl,A1,barrier,none,2026-04-13
                """);
        write("in", "crews.csv", """
                crew,trade,latitude,longitude,time_zone
                W1,window,49.28,-123.12,America/Vancouver
                S1,siding,49.28,-123.12,America/Vancouver
                """);
        write("in", "shifts.csv", """
                crew,date,start,end
                W1,2026-04-13,07:00,16:00
                S1,2026-04-13,07:00,16:00
                """);
        write("in", "forecast.csv", """
                site,hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity
                quay,2026-04-13T07:00-07:00,0,0,3,5,270,10,70
                """);
        write("in", "labour.csv", """
                task,method,fixed_min,per_m2_min,pan_min,setup_site_min,setup_facade_min,setup_level_min
                install,*,30,20,10,30,15,10
                clad,*,20,20,0,30,15,10
                """);
        write("plan", "visits.csv", VISITS);
    }

    private void write(String place, String file, String text) throws IOException {
        Path target = Files.createDirectories(folder.resolve(place));
        Files.writeString(target.resolve(file), text);
    }

    private int check(String... more) {
        String[] words = new String[more.length + 5];
        System.arraycopy(
                new String[] {
                    "check",
                    "--in",
                    folder.resolve("in").toString(),
                    "--plan",
                    folder.resolve("plan").toString()
                },
                0,
                words,
                0,
                5);
        System.arraycopy(more, 0, words, 5, more.length);
        return new Commands((_, _) -> {}, new PrintWriter(out, true), new PrintWriter(err, true)).run(words);
    }

    @Test
    void a_plan_that_keeps_every_rule_ends_with_0_and_says_what_it_did_not_judge() {
        assertThat(check()).isZero();
        assertThat(out.toString())
                .contains("The plan of 2 visits keeps every rule (medium 0, soft 1025 as counted here).")
                .contains("Not judged, because it is absent: unplanned.csv")
                .contains("never a statement that work at height is safe");
    }

    @Test
    void a_right_ledger_passes_and_a_wrong_one_is_named() throws IOException {
        write("plan", "ledger.csv", LEDGER);
        assertThat(check()).isZero();
        write("plan", "ledger.csv", LEDGER.replace("setup,60,1,60", "setup,30,1,60"));
        assertThat(check()).isEqualTo(1);
        assertThat(out.toString()).contains("[5] ledger, setup amount: the plan says 30, the audit counts 60");
    }

    @Test
    void each_breach_is_a_line_and_the_command_ends_with_1() throws IOException {
        write("plan", "visits.csv", VISITS.replace("T07:30", "T07:29").replace("T08:30-07:00\n", "T08:29-07:00\n"));
        assertThat(check()).isEqualTo(1);
        assertThat(out.toString())
                .contains("[2] crew W1, install of Q1, Mon 13 Apr 2026 07:29: the crew is free at")
                .contains("departs from the rules in 1 place, 1 of them hard");
    }

    @Test
    void the_moment_of_planning_can_be_given() {
        assertThat(check("--now", "2026-04-13T07:31-07:00")).isEqualTo(1);
        assertThat(out.toString()).contains("starts before the plan does, at Mon 13 Apr 2026 07:31");
    }

    @Test
    void a_moment_without_offset_is_refused() {
        assertThat(check("--now", "2026-04-13")).isEqualTo(2);
        assertThat(err.toString()).contains("--now", "2026-04-13", "--help");
    }

    @Test
    void visits_that_differ_from_the_plan_that_people_had_are_counted() throws IOException {
        write("plan", "ledger.csv", LEDGER);
        write("had", "visits.csv", VISITS);
        String had = folder.resolve("had").toString();
        assertThat(check("--from", had)).isZero();
        write(
                "had",
                "visits.csv",
                VISITS.replace("clad,2026-04-13T08:30", "clad,2026-04-14T08:30")
                        .replace("S1,2026-04-13", "S1,2026-04-14")
                        .replace("2026-04-13T09:20", "2026-04-14T09:20"));
        assertThat(check("--from", had)).isEqualTo(1);
        assertThat(out.toString()).contains("ledger, changed amount: the plan says 0, the audit counts 1");
    }

    @Test
    void a_plan_that_names_nobody_known_is_bad_input() throws IOException {
        write("plan", "visits.csv", VISITS.replace("W1", "W9"));
        assertThat(check()).isEqualTo(2);
        assertThat(err.toString()).contains("visits.csv:3 crew", "W9");
    }

    @Test
    void folders_that_are_not_there_are_bad_input() throws IOException {
        Files.delete(folder.resolve("plan").resolve("visits.csv"));
        assertThat(check()).isEqualTo(2);
        assertThat(err.toString()).contains("visits.csv");
        Files.delete(folder.resolve("in").resolve("crews.csv"));
        assertThat(check()).isEqualTo(2);
        assertThat(err.toString()).contains("crews.csv");
    }
}
