package drylap.audit;

import static drylap.audit.TwoSites.at;
import static drylap.kernel.Task.CLAD;
import static drylap.kernel.Task.INSTALL;
import static drylap.kernel.Task.TEST;
import static drylap.kernel.Task.WRAP;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.kernel.Task;
import drylap.planning.CoverNow;
import drylap.planning.Visit;
import drylap.weather.ForecastHour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The legal plan of the two sites, broken on purpose in one place: the audit names the one rule that it breaks. */
class BrokenPlansTests {
    private static Arguments broken(String how, ContractRule rule, UnaryOperator<Case> change) {
        return arguments(how, change, rule);
    }

    static Stream<Arguments> lists() {
        return Stream.of(
                broken("crew unknown", ContractRule.KNOWN, c -> c.edit("M2", CLAD, v -> Case.by(v, "S9"))),
                broken("opening unknown", ContractRule.KNOWN, c -> c.add("S1", "Z1", CLAD, "15 15:00", 30)),
                broken(
                        "test that nobody wants",
                        ContractRule.TASK_NEEDED,
                        c -> c.add("T1", "Q1", TEST, "14 12:00", 45)),
                broken(
                        "neither planned nor unplanned",
                        ContractRule.ONCE,
                        c -> c.unplanned(c.unplanned().subList(0, 1))),
                broken(
                        "planned and unplanned",
                        ContractRule.ONCE,
                        c -> c.unplanned(and(c, "Q4", CLAD, "horizon full"))),
                broken("planned twice", ContractRule.ONCE, c -> c.add("S1", "M2", CLAD, "15 14:12", 50)),
                broken(
                        "unplanned for no known reason",
                        ContractRule.REASON,
                        c -> c.unplanned(List.of(
                                c.unplanned().getFirst(),
                                new ClaimedPlan.Unplanned(new OpeningId("M3"), CLAD, "did not feel like it")))),
                broken("list not sorted", ContractRule.SORTED, c -> c.visits(swapped(c.visits(), 5, 6))),
                broken(
                        "number on the sheet wrong",
                        ContractRule.SEQUENCE,
                        c -> c.edit("Q2", INSTALL, v -> Case.numbered(v, 4))),
                broken("date wrong", ContractRule.DATE, c -> c.edit("Q2", TEST, v -> dated(v, "2026-04-15"))),
                broken("level wrong", ContractRule.PLACE, c -> c.edit("M2", CLAD, v -> level(v, 2))),
                broken(
                        "cover without need",
                        ContractRule.COVER_NOW,
                        c -> c.covering(new CoverNow(new OpeningId("Q3"), at("12 15:00"), at("14 06:00"), 35))));
    }

    static Stream<Arguments> crewsAndDays() {
        return Stream.of(
                broken("wrap crew hangs siding", ContractRule.TRADE, c -> c.give("M2", CLAD, "R1", "15 13:22")),
                broken("method not trained", ContractRule.TRAINED, c -> c.give("Q4", INSTALL, "W2", "13 12:30")),
                broken("two tasks at once", ContractRule.ONE_AT_A_TIME, c -> c.move("Q2", INSTALL, "13 09:44")),
                broken("before the shift", ContractRule.SHIFT, c -> c.move("M2", INSTALL, "14 06:59")),
                broken("after the limit", ContractRule.SHIFT, c -> c.move("M2", CLAD, "15 16:20")),
                broken("no shift that day", ContractRule.SHIFT, c -> c.move("M2", CLAD, "16 13:22")),
                broken("no time from the base", ContractRule.TRAVEL, c -> c.move("M1", INSTALL, "13 07:19")),
                broken("no time between sites", ContractRule.TRAVEL, c -> c.road("quay", "mill", 61)),
                broken("set-up at the site missing", ContractRule.SETUP, c -> c.move("M1", INSTALL, "13 07:49")),
                broken("set-up at the facade missing", ContractRule.SETUP, c -> c.move("Q4", CLAD, "15 10:34")),
                broken("set-up at the level missing", ContractRule.SETUP, c -> c.move("Q3", CLAD, "15 09:29")),
                broken("home too late", ContractRule.HOME, c -> c.move("M2", CLAD, "15 15:41")),
                broken("in the break", ContractRule.BREAK, c -> c.move("Q3", WRAP, "14 12:29")),
                broken("install across the break", ContractRule.UNBROKEN, c -> c.move("Q4", INSTALL, "13 11:30")),
                broken("too short", ContractRule.MINUTES, c -> c.edit("M2", INSTALL, v -> Case.lasting(v, 59))),
                broken(
                        "one step more is left",
                        ContractRule.MINUTES,
                        c -> c.opening("Q3", o -> Design.like(o).begun(3).opening())),
                broken(
                        "before delivery",
                        ContractRule.DELIVERY,
                        c -> c.opening(
                                "M2",
                                o -> Design.like(o).delivered("2026-04-15").opening())),
                broken("pinned and moved", ContractRule.PINNED, c -> c.move("M1", WRAP, "14 08:55")),
                broken("before the plan starts", ContractRule.START, c -> c.now("13 07:51")));
    }

    static Stream<Arguments> order() {
        return Stream.of(
                broken("test before cure", ContractRule.CURE, c -> c.move("Q2", TEST, "14 10:44")),
                broken(
                        "wrap before a test of its course",
                        ContractRule.WRAP_COURSE,
                        c -> c.move("Q1", WRAP, "14 11:29")),
                broken(
                        "wrap before an install of its course",
                        ContractRule.WRAP_COURSE,
                        c -> c.move("M2", INSTALL, "14 08:01")),
                broken("wrap before the level below", ContractRule.WRAP_BELOW, c -> c.move("Q1", WRAP, "14 13:00")),
                broken("clad before wrap", ContractRule.CLAD_COURSE, c -> c.move("Q2", CLAD, "14 08:00")),
                broken(
                        "clad before install, no wrap",
                        ContractRule.CLAD_COURSE,
                        c -> c.move("Q4", INSTALL, "15 10:00")),
                broken("clad before the level below", ContractRule.CLAD_BELOW, c -> c.move("Q3", CLAD, "14 13:00")),
                broken("apron free too long", ContractRule.APRON, c -> c.rule(Rule.APRON_MAX_DAYS, 1)),
                broken("bare too long", ContractRule.BARE, c -> c.rule(Rule.BARE_MAX_DAYS, 1)));
    }

    static Stream<Arguments> weather() {
        return Stream.of(
                broken("install in rain", ContractRule.RAINING, c -> c.move("Q4", INSTALL, "14 07:59")),
                broken("clad in rain", ContractRule.RAINING, c -> c.move("Q4", CLAD, "14 07:40")),
                broken(
                        "wrap in rain",
                        ContractRule.RAINING,
                        c -> c.weather("quay", "14 12:00", h -> TwoForecasts.rain(h.start(), 0.2, 0.3, 90))),
                broken("install on a wet wall", ContractRule.DRYING, c -> c.move("Q1", INSTALL, "14 10:00")),
                broken("install in the cold", ContractRule.COLD, c -> c.move("Q4", INSTALL, "14 12:30")),
                broken("test in frost", ContractRule.COLD, c -> c.weather("quay", "14 11:00", h -> cold(h, 0.9))),
                broken("install in gusts", ContractRule.GUST, c -> c.weather("mill", "13 08:00", h -> gusty(h, 11.1))),
                broken("test in gusts", ContractRule.GUST, c -> c.weather("quay", "14 10:00", h -> gusty(h, 11.1))),
                broken("wrap in gusts", ContractRule.GUST, c -> c.move("M2", WRAP, "14 13:45")),
                broken("clad in the dark", ContractRule.DARK, c -> c.move("Q4", CLAD, "15 05:45")),
                broken("no time to skin", ContractRule.SKIN, c -> c.move("M1", INSTALL, "13 13:21")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"lists", "crewsAndDays", "order", "weather"})
    void a_broken_plan_breaks_just_this_rule(String how, UnaryOperator<Case> change, ContractRule rule) {
        assertThat(change.apply(Case.legal()).audit().breaches())
                .as(how)
                .isNotEmpty()
                .allMatch(breach -> breach.rule() == rule);
    }

    @Test
    void an_install_that_runs_into_the_next_shift_is_broken() {
        Case overnight = Case.legal()
                .move("Q4", INSTALL, "13 15:00")
                .edit("Q4", INSTALL, visit -> Case.lasting(visit, 17 * 60 + 30));
        assertThat(overnight.audit().breaches())
                .extracting(Breach::rule)
                .containsExactlyInAnyOrder(
                        ContractRule.UNBROKEN, ContractRule.MINUTES, ContractRule.RAINING, ContractRule.DARK);
    }

    @Test
    void a_pinned_visit_left_out_is_named() {
        List<Visit> without = Case.legal().visits().stream()
                .filter(visit -> !(visit.opening().value().equals("M1") && visit.task() == WRAP))
                .toList();
        assertThat(Case.legal().visits(without).audit().breaches())
                .extracting(Breach::rule)
                .contains(ContractRule.PINNED, ContractRule.ONCE, ContractRule.CLAD_COURSE);
    }

    private static List<ClaimedPlan.Unplanned> and(Case c, String opening, Task task, String reason) {
        List<ClaimedPlan.Unplanned> more = new ArrayList<>(c.unplanned());
        more.add(new ClaimedPlan.Unplanned(new OpeningId(opening), task, reason));
        return more;
    }

    private static List<Visit> swapped(List<Visit> visits, int i, int j) {
        List<Visit> swapped = new ArrayList<>(visits);
        Collections.swap(swapped, i, j);
        return swapped;
    }

    private static Visit dated(Visit v, String date) {
        return new Visit(
                v.crew(),
                LocalDate.parse(date),
                v.sequence(),
                v.facade(),
                v.level(),
                v.opening(),
                v.task(),
                v.start(),
                v.end());
    }

    private static Visit level(Visit v, int level) {
        return new Visit(
                v.crew(), v.date(), v.sequence(), v.facade(), level, v.opening(), v.task(), v.start(), v.end());
    }

    private static ForecastHour cold(ForecastHour h, double celsius) {
        return new ForecastHour(h.start(), 0, 0, 3, 5, 270, celsius, 70);
    }

    private static ForecastHour gusty(ForecastHour h, double gust) {
        return new ForecastHour(h.start(), 0, 0, 8, gust, 270, 10, 70);
    }
}
