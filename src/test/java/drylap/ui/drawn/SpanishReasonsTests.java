package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.TUESDAY;
import static drylap.ui.drawn.QuayPlan.at;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.audit.PlanBreaks;
import drylap.kernel.CrewId;
import drylap.kernel.Language;
import drylap.kernel.OpeningId;
import drylap.kernel.Reading;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.Explainer;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.SmallChange;
import drylap.planning.Visit;
import drylap.speech.SpanishWords;
import drylap.speech.Speech;
import drylap.takeoff.Extent;
import drylap.ui.QuayFolder;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Why a visit is where it is, why it may not go elsewhere and what is broken is said in Spanish as a whole. */
class SpanishReasonsTests {
    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));
    private final SpanishWords words = new SpanishWords(List.of("Quay Nine Mill Row west south QW MS"));

    @Test
    void what_is_broken_of_a_plan_holds_no_english() {
        var shown = new QuayPlan()
                .visit("P1", MONDAY, "06:00", "06:10", Task.INSTALL, "QW2-01")
                .visit("W1", MONDAY, "11:20", "13:30", Task.INSTALL, "MS1-02")
                .visit("W1", MONDAY, "13:00", "21:30", Task.INSTALL, "QW1-01")
                .visit("C1", TUESDAY, "07:30", "07:45", Task.CLAD, "QW2-01")
                .visit("P1", TUESDAY, "07:30", "07:45", Task.WRAP, "QW2-01")
                .visit("P1", TUESDAY, "07:46", "07:50", Task.WRAP, "MS1-02")
                .shown();
        var broken =
                PlanBreaks.of(shown.folder(), shown.plan().map(Plan::visits).orElseThrow(), at(MONDAY, "05:00"));
        List<String> said = new ArrayList<>();
        BrokenVisits.of(SPANISH, shown, broken).rows().forEach(row -> said.addAll(List.of(row.when(), row.why())));
        for (var one : broken.broken()) said.add(SPANISH.it(one.breach().rule().words()));

        assertThat(said).hasSizeGreaterThan(12).anyMatch(text -> text.contains("empieza antes de que termine"));
        assertThat(said).allSatisfy(text -> assertThat(words.strange(text)).isEmpty());
    }

    @Test
    void why_a_visit_is_where_it_is_holds_no_english() {
        var folder = new QuayFolder().folder();
        Plan plan = Planner.standard().plan(folder, new PlanRequest(null, null, 100L, 1), _ -> {}, () -> false);
        var shown = new QuayPlan().shown();
        List<String> said = new ArrayList<>();
        for (Visit visit : plan.visits()) {
            var why = Explainer.standard()
                    .why(folder, plan, visit.opening(), visit.task())
                    .orElseThrow();
            WhySheet.of(SPANISH, shown, why, List.of())
                    .rules()
                    .forEach(rule -> said.addAll(List.of(rule.when(), rule.words())));
        }
        assertThat(said).hasSizeGreaterThan(20).anyMatch(text -> text.contains("min de preparación"));
        assertThat(said).allSatisfy(text -> assertThat(words.strange(text)).isEmpty());
    }

    @Test
    void what_would_plan_a_task_holds_no_english() {
        var shift = new QuayFolder().folder().shifts().getFirst();
        for (SmallChange change : List.of(
                new SmallChange.PlanAgain(),
                new SmallChange.Overtime(new CrewId("W1"), MONDAY, shift.end()),
                new SmallChange.EarlierDelivery(new OpeningId("QW2-01"), 1),
                new SmallChange.CrewDay(shift, TUESDAY),
                new SmallChange.LongerLimit(new SiteId("Q"), Rule.APRON_MAX_DAYS),
                new SmallChange.LongerLimit(new SiteId("Q"), Rule.BARE_MAX_DAYS)))
            assertThat(words.strange(SPANISH.it(change.saying()))).isEmpty();
    }

    @Test
    void the_week_on_paper_holds_no_english() {
        var shown = new QuayPlan()
                .visit("W1", MONDAY, "11:00", "13:30", Task.INSTALL, "QW2-01")
                .visit("P1", TUESDAY, "14:00", "14:15", Task.WRAP, "QW1-02")
                .cover("QW1-01", "12:00", 40)
                .shown();
        var crew = new WeekChoice(null, null, new CrewId("W1"));
        List<String> said = new ArrayList<>();
        for (var choice : List.of(WeekChoice.ALL, crew)) {
            var week = WeekPaperPresenter.sheet(SPANISH, shown, choice, at(MONDAY, "06:10"), "https://example.org");
            said.addAll(List.of(week.title(), week.origin()));
            said.addAll(week.notes());
            week.days().forEach(day -> said.addAll(day.rain()));
            for (var row : week.crews()) {
                said.add(row.trade());
                for (var cell : row.cells()) {
                    said.add(cell.said());
                    cell.stays().forEach(stay -> {
                        said.addAll(List.of(stay.head(), stay.place()));
                        said.addAll(stay.warnings());
                    });
                }
            }
        }
        assertThat(said)
                .anyMatch(text -> text.contains("lluvia pronosticada para estas horas"))
                .anyMatch(text -> text.contains("más allá del pronóstico"))
                .anyMatch(text -> text.contains("solo cuadrilla W1"));
        assertThat(said).allSatisfy(text -> assertThat(words.strange(text)).isEmpty());
    }

    @Test
    void the_take_off_on_paper_holds_no_english() {
        var shown = QuayPlan.unplannedFolder();
        for (Extent extent : Extent.values()) {
            var choice = new TakeOffChoice.OfSite(new SiteId("Q"), extent);
            var paper = TakeOffPaperPresenter.sheet(
                    SPANISH, shown, TakeOffSheet.of(SPANISH, shown, choice).orElseThrow(), at(MONDAY, "06:10"));
            List<String> said = new ArrayList<>(List.of(paper.title(), paper.origin()));
            said.addAll(paper.facts());
            said.addAll(paper.notes());
            paper.shares().forEach(line -> said.add(line.words()));
            for (var stock : paper.stocks()) {
                said.add(stock.head());
                said.addAll(stock.cuts());
                stock.rolls().forEach(line -> said.addAll(List.of(line.name(), line.words())));
            }
            assertThat(said).hasSizeGreaterThan(8);
            assertThat(said).allSatisfy(text -> assertThat(words.strange(text)).isEmpty());
        }
    }
}
