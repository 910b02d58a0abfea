package drylap.audit;

import static drylap.audit.AuditTests.BY_HAND;
import static drylap.audit.TwoSites.at;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.OpeningId;
import drylap.planning.CoverNow;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.weather.ForecastHour;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Ledgers that are wrong in one number. */
class LedgerClaimsTests {
    private static List<Breach> judged(Ledger ledger) {
        return Case.legal().ledger(ledger).audit().breaches();
    }

    private static Ledger with(LedgerTerm term, UnaryOperator<Ledger.Line> change) {
        return new Ledger(
                BY_HAND.lines().stream()
                        .map(line -> line.term() == term ? change.apply(line) : line)
                        .toList(),
                BY_HAND.hard(),
                BY_HAND.medium(),
                BY_HAND.soft());
    }

    @ParameterizedTest
    @EnumSource
    void a_wrong_amount_is_named_with_its_term(LedgerTerm term) {
        assertThat(judged(with(term, l -> new Ledger.Line(term, l.amount() + 1, l.weight(), l.cost()))))
                .singleElement()
                .satisfies(breach -> assertThat(breach.rule()).isEqualTo(ContractRule.LEDGER_TERM))
                .satisfies(
                        breach -> assertThat(breach.where().words()).isEqualTo("ledger, " + term.code() + " amount"));
    }

    @ParameterizedTest
    @EnumSource
    void a_wrong_cost_is_named_with_its_term(LedgerTerm term) {
        assertThat(judged(with(term, l -> new Ledger.Line(term, l.amount(), l.weight(), l.cost() - 1))))
                .singleElement()
                .satisfies(breach -> assertThat(breach.rule()).isEqualTo(ContractRule.LEDGER_TERM))
                .satisfies(breach -> assertThat(breach.where().words()).isEqualTo("ledger, " + term.code() + " cost"));
    }

    @ParameterizedTest
    @EnumSource
    void a_missing_line_is_named(LedgerTerm term) {
        Ledger without = new Ledger(
                BY_HAND.lines().stream().filter(line -> line.term() != term).toList(), 0, 6000, BY_HAND.soft());
        assertThat(judged(without)).extracting(breach -> breach.what().words()).containsExactly("the line is missing");
    }

    @Test
    void a_wrong_weight_is_named() {
        assertThat(judged(with(LedgerTerm.TRAVEL, l -> new Ledger.Line(l.term(), 300, 3, 600))))
                .extracting(breach -> breach.where().words())
                .containsExactly("ledger, travel weight");
    }

    @Test
    void wrong_sums_are_named() {
        assertThat(judged(new Ledger(BY_HAND.lines(), 1, 6000, 8_100)))
                .extracting(Breach::rule)
                .containsExactly(ContractRule.HARD);
        assertThat(judged(new Ledger(BY_HAND.lines(), 0, 5000, 8_100)))
                .extracting(Breach::rule)
                .containsExactly(ContractRule.MEDIUM);
        assertThat(judged(new Ledger(BY_HAND.lines(), 0, 6000, 123_935)))
                .extracting(Breach::rule)
                .containsExactly(ContractRule.SOFT);
    }

    @Test
    void a_chance_that_lies_on_a_half_thousandth_may_be_rounded_either_way() {
        // M2's install touches the hours from 7 and from 8; 0.0505 and 0 make 50.5 thousandths.
        Case half = Case.legal().weather("mill", "14 07:00", hour -> TwoForecasts.dry(hour.start(), 0.0505));
        for (long risk = 1182; risk <= 1183; risk++)
            assertThat(half.ledger(risk(risk)).audit().breaches()).isEmpty();
        assertThat(half.ledger(risk(1181)).audit().breaches()).isNotEmpty();
        assertThat(half.ledger(risk(1184)).audit().breaches()).isNotEmpty();
    }

    @Test
    void one_chance_for_both_hours_of_an_install_counts_once() {
        // M2's install touches the hours from 7 and from 8, for which 50 thousandths stand in the ledger by hand.
        Case shared = Case.legal()
                .weather("mill", "14 07:00", hour -> told(hour, "14 07:00"))
                .weather("mill", "14 08:00", hour -> told(hour, "14 07:00"));
        assertThat(shared.ledger(risk(1182 - 50 + 100)).audit().breaches()).isEmpty();
    }

    private static ForecastHour told(ForecastHour hour, String from) {
        return new ForecastHour(hour.start(), 0, 0.1, 3, 5, 270, 10, 70, at(from));
    }

    private static Ledger risk(long amount) {
        Ledger ledger = with(LedgerTerm.RAIN_RISK, l -> new Ledger.Line(l.term(), amount, 2, amount * 2));
        return new Ledger(ledger.lines(), 0, 6000, 8_100 + (amount - 1182) * 2);
    }

    @Test
    void a_cover_entry_must_say_since_when_until_when_and_how_long() {
        CoverNow right = new CoverNow(new OpeningId("Q3"), at("12 15:00"), at("13 08:00"), 35);
        Case early = Case.legal()
                .weather("quay", "13 08:00", hour -> TwoForecasts.rain(hour.start(), 0.3, 0.4, 180))
                .covering(right);
        assertThat(covers(early)).isEmpty();
        assertThat(covers(early.covering())).hasSize(1);
        assertThat(covers(early.covering(right, right))).hasSize(1);
        assertThat(covers(early.covering(new CoverNow(right.opening(), at("12 15:01"), right.nextRain(), 35))))
                .hasSize(1);
        assertThat(covers(early.covering(new CoverNow(right.opening(), right.openSince(), at("14 06:00"), 35))))
                .hasSize(1);
        assertThat(covers(early.covering(new CoverNow(right.opening(), right.openSince(), right.nextRain(), 34))))
                .hasSize(1);
    }

    private static List<Breach> covers(Case c) {
        return c.audit().breaches().stream()
                .filter(breach -> breach.rule() == ContractRule.COVER_NOW)
                .toList();
    }
}
