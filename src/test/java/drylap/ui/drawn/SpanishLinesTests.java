package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.TUESDAY;
import static drylap.ui.drawn.QuayPlan.at;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.handoff.ActKind;
import drylap.hooks.Delivery;
import drylap.hooks.DeliveryState;
import drylap.hooks.Hook;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.Language;
import drylap.kernel.OpeningId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.Reading;
import drylap.kernel.SiteId;
import drylap.kernel.TimeWindow;
import drylap.planning.LedgerTerm;
import drylap.season.Estimate;
import drylap.speech.SpanishWords;
import drylap.speech.Speech;
import drylap.whatif.AddCrew;
import drylap.whatif.Change;
import drylap.whatif.DelayDelivery;
import drylap.whatif.DropDay;
import drylap.whatif.OtherForecast;
import drylap.whatif.OtherRain;
import drylap.whatif.Outcome.Handover;
import drylap.whatif.OutcomeFigures;
import drylap.whatif.RainByPercent;
import drylap.whatif.Scenario;
import java.net.URI;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Scenarios, their outcomes and what programs were told are said in Spanish as a whole, whatever came of them. */
class SpanishLinesTests {
    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));
    private static final SiteId QUAY = new SiteId("Q");
    private static final FacadeId SOUTH = new FacadeId(new SiteId("M"), "south");
    private final SpanishWords words =
            new SpanishWords(List.of("Quay Nine Mill Row west south QW Ada office.example dear"));
    private final FolderShown shown = QuayPlan.unplannedFolder();

    private void areSpanish(List<String> said) {
        assertThat(said).allSatisfy(text -> assertThat(words.strange(text)).isEmpty());
    }

    @Test
    void every_change_of_a_scenario_is_said() {
        var hours = new TimeWindow(at(MONDAY, "08:00"), at(MONDAY, "11:00"));
        List<Change> all = List.of(
                new AddCrew(new CrewId("W2"), new CrewId("W1"), MONDAY),
                new DropDay(MONDAY, new CrewId("W1"), null),
                new DropDay(MONDAY, null, QUAY),
                new DelayDelivery(QuayPlan.west(), null, 1),
                new DelayDelivery(null, new OpeningId("QW1-01"), 3),
                new OtherRain(QUAY, hours, true),
                new OtherRain(QUAY, hours, false),
                new RainByPercent(-50),
                new RainByPercent(100),
                new OtherForecast(shown.folder().forecasts()));

        areSpanish(
                all.stream().map(one -> ScenarioWords.of(SPANISH, shown, one)).toList());
    }

    @Test
    void every_outcome_is_said() {
        var base = outcome(Scenario.AS_IT_IS, at(TUESDAY, "01:00"), 0, null, 0);
        List<OutcomeFigures> all = List.of(
                base,
                outcome("dear", at(MONDAY, "23:00"), 0, at(MONDAY, "09:00"), 0),
                outcome("dear", at(TUESDAY.plusDays(2), "01:00"), 0, null, 2),
                outcome("dear", at(TUESDAY, "02:00"), 0, null, 0),
                outcome("dear", null, 1, null, 0));
        var sheet = WhatIfSheet.of(SPANISH, shown, all);

        List<String> said = new ArrayList<>(sheet.names());
        for (var group : sheet.groups())
            for (var line : group.lines()) {
                said.addAll(List.of(group.name(), line.name(), line.detail()));
                line.cells().forEach(cell -> said.addAll(List.of(cell.value(), cell.more())));
            }
        assertThat(said).contains("como está", "1 día antes", "2 días más tarde", "ahora se entrega", "el mismo día");
        areSpanish(said);
    }

    private static OutcomeFigures outcome(
            String name, @Nullable Instant west, int left, @Nullable Instant south, int leftSouth) {
        Map<LedgerTerm, Long> costs =
                Arrays.stream(LedgerTerm.values()).collect(Collectors.toMap(Function.identity(), _ -> 7L));
        return new OutcomeFigures(
                name,
                left,
                0,
                1200,
                costs,
                3,
                List.of(
                        new Handover(QuayPlan.west(), MONDAY, west, left),
                        new Handover(SOUTH, null, south, leftSouth)));
    }

    @Test
    void how_likely_it_is_is_said() {
        List<String> said = new ArrayList<>();
        for (double chance : new double[] {0.99, 0.9, 0.7, 0.5, 0.3, 0.1, 0.01})
            said.add(SeasonWords.likely(SPANISH, new Estimate(chance, 0.01)));
        assertThat(said).doesNotHaveDuplicates();
        areSpanish(said);
    }

    @Test
    void what_a_program_was_told_is_said() {
        var hook = new Hook(
                1,
                new PersonId(1),
                "Ada",
                "Ada",
                URI.create("https://office.example"),
                Set.of(ActKind.RELEASED),
                Reach.of(List.of(QUAY)),
                "Ada",
                at(MONDAY, "08:00"),
                null);
        var line = new ProgramLines(
                        SPANISH,
                        QuayPlan.unplannedFolder().folder().sites().getFirst().zone(),
                        at(MONDAY, "09:00"))
                .hook(
                        hook,
                        List.of(
                                told(DeliveryState.DELIVERED, 1, "answered 200"),
                                told(DeliveryState.WAITING, 0, null),
                                told(DeliveryState.WAITING, 1, "office.example did not answer in time"),
                                told(DeliveryState.GIVEN_UP, 10, "the connection with office.example broke off"),
                                told(DeliveryState.GIVEN_UP, 2, null)));

        List<String> said = new ArrayList<>(List.of(line.told(), line.whose()));
        line.deliveries().forEach(one -> said.add(one.words()));
        assertThat(said).anyMatch(text -> text.contains("1 intento en vano: office.example no respondió a tiempo"));
        areSpanish(said);
    }

    private static Delivery told(DeliveryState state, int attempts, @Nullable String last) {
        return new Delivery(
                new UUID(0, 1),
                1,
                ActKind.RELEASED,
                QUAY,
                "",
                at(MONDAY, "08:00"),
                state,
                state == DeliveryState.WAITING ? at(MONDAY, "08:10") : null,
                attempts,
                at(MONDAY, "08:01"),
                last);
    }
}
