package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.FacadeId;
import drylap.kernel.SiteId;
import drylap.planning.LedgerTerm;
import drylap.speech.Speech;
import drylap.ui.drawn.WhatIfSheet.Cell;
import drylap.ui.drawn.WhatIfSheet.Line;
import drylap.ui.drawn.WhatIfSheet.Trend;
import drylap.whatif.Outcome.Handover;
import drylap.whatif.OutcomeFigures;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class WhatIfSheetTests {
    private static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);
    private static final LocalDate TUESDAY = MONDAY.plusDays(1);
    private static final FacadeId SOUTH = new FacadeId(new SiteId("M"), "south");
    private final FolderShown shown = QuayPlan.unplannedFolder();

    private static OutcomeFigures figures(String name, long soft, Handover west, Handover south) {
        return new OutcomeFigures(name, 0, 0, soft, Map.of(LedgerTerm.TRAVEL, soft), 3, List.of(west, south));
    }

    private static Handover west(@Nullable Instant by, int left) {
        return new Handover(QuayPlan.west(), MONDAY, by, left);
    }

    private static Handover south(@Nullable Instant by, int left) {
        return new Handover(SOUTH, null, by, left);
    }

    private static Instant at(LocalDate date, String clock) {
        return QuayPlan.at(date, clock);
    }

    private Line line(String name, OutcomeFigures... outcomes) {
        return WhatIfSheet.of(Speech.ENGLISH, shown, List.of(outcomes)).groups().stream()
                .flatMap(group -> group.lines().stream())
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void costs_stand_beside_those_of_the_job_as_it_is() {
        var base = figures("as it is", 1200, west(at(MONDAY, "15:00"), 0), south(null, 0));
        var dear = figures("dear", 1600, west(at(MONDAY, "15:00"), 0), south(null, 0));
        var cheap = figures("cheap", 200, west(at(MONDAY, "15:00"), 0), south(null, 0));

        assertThat(line("Sum", base, dear, cheap).cells())
                .containsExactly(
                        new Cell("1\u2009200", "", Trend.LEVEL),
                        new Cell("1\u2009600", "+400", Trend.WORSE),
                        new Cell("200", "\u22121\u2009000", Trend.BETTER));
        assertThat(line("Days that crews come out", base, dear).cells().getLast())
                .isEqualTo(new Cell("3", "as before", Trend.LEVEL));
    }

    @Test
    void terms_that_are_nought_everywhere_are_left_out() {
        var base = figures("as it is", 1200, west(null, 0), south(null, 0));
        assertThat(WhatIfSheet.of(Speech.ENGLISH, shown, List.of(base))
                        .groups()
                        .get(1)
                        .lines())
                .extracting(Line::name)
                .containsExactly("Sum", "Travel", "Days that crews come out");
    }

    @Test
    void a_hand_over_is_compared_by_its_day_at_the_site() {
        var base = figures("as it is", 0, west(at(TUESDAY, "01:00"), 0), south(at(MONDAY, "12:00"), 0));
        var other = figures("other", 0, west(at(MONDAY, "23:00"), 0), south(at(MONDAY, "09:00"), 0));
        var third = figures("third", 0, west(at(TUESDAY.plusDays(2), "01:00"), 0), south(at(MONDAY, "12:00"), 0));

        assertThat(line("Quay Nine, west", base, other, third).cells())
                .containsExactly(
                        new Cell("Tue 14 Apr 01:00, late", "", Trend.LEVEL),
                        new Cell("Mon 13 Apr 23:00", "1 day earlier", Trend.BETTER),
                        new Cell("Thu 16 Apr 01:00, late", "2 days later", Trend.WORSE));
        assertThat(line("Mill Row, south", base, other, third).cells())
                .extracting(Cell::more)
                .containsExactly("", "same day", "as before");
        assertThat(line("Quay Nine, west", base).detail()).isEqualTo("due Mon 13 Apr");
    }

    @Test
    void a_wall_that_is_not_handed_over_says_how_much_is_missing() {
        var base = figures("as it is", 0, west(null, 2), south(at(MONDAY, "12:00"), 0));
        var better = figures("better", 0, west(at(MONDAY, "12:00"), 0), south(null, 1));
        var less = figures("less", 0, west(null, 1), south(at(MONDAY, "12:00"), 0));

        assertThat(line("Quay Nine, west", base, better, less).cells())
                .containsExactly(
                        new Cell("2 not planned", "", Trend.LEVEL),
                        new Cell("Mon 13 Apr 12:00", "handed over now", Trend.BETTER),
                        new Cell("1 not planned", "\u22121", Trend.BETTER));
        assertThat(line("Mill Row, south", base, better).cells().getLast())
                .isEqualTo(new Cell("1 not planned", "not handed over now", Trend.WORSE));
    }
}
