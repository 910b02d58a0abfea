package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.SiteId;
import drylap.planning.RuleChange;
import drylap.speech.Speech;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RuleSheetTests {
    private static final SiteId QUAY = new SiteId("Q");
    private static final RuleBook IMPORTED =
            RuleBook.STANDARD.with(null, Rule.DRYING_H, 5).with(QUAY, Rule.SKIN_MIN, 45);

    private static RuleChange change(long id, @Nullable SiteId site, Rule rule, @Nullable Double value) {
        return new RuleChange(id, site, rule, value, "data sheet", "Ida", Instant.parse("2026-04-13T16:00:00Z"));
    }

    private static RuleSheet.Line line(@Nullable SiteId site, Rule rule, RuleChange... changes) {
        RuleBook now = IMPORTED;
        for (var one : changes) {
            var value = one.value();
            if (value != null) now = now.with(one.site(), one.rule(), value);
        }
        var facts = new RuleSheet.Facts(now, IMPORTED, List.of(changes), ZoneId.of("America/Los_Angeles"));
        return RuleSheet.of(Speech.ENGLISH, facts, site).lines().stream()
                .filter(one -> one.rule() == rule)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_default_says_so_and_names_its_source() {
        var line = line(null, Rule.INSTALL_MIN_C);

        assertThat(line.value()).isEqualTo("4.4 °C");
        assertThat(line.from()).isEqualTo("default");
        assertThat(line.standard()).contains("UFGS 07 92 00");
        assertThat(line.bounds()).isEqualTo("a number from -40 to 40");
        assertThat(line.ownHere()).isFalse();
    }

    @ParameterizedTest
    @EnumSource(Rule.class)
    void every_rule_says_what_comes_of_another_number(Rule rule) {
        assertThat(line(null, rule).effect()).endsWith(".").containsAnyOf("aise it", "ower it", "Other widths");
    }

    @Test
    void a_site_without_its_own_value_says_where_the_one_of_everywhere_comes_from() {
        assertThat(line(QUAY, Rule.DRYING_H).from()).isEqualTo("as everywhere: from the job folder");
        assertThat(line(QUAY, Rule.SKIN_MIN).from()).isEqualTo("from the job folder, for this site");
        assertThat(line(QUAY, Rule.DRYING_H, change(3, null, Rule.DRYING_H, 6.0))
                        .from())
                .isEqualTo("as everywhere: set by Ida, Mon 13 Apr 09:00: data sheet");
    }

    @Test
    void a_change_here_says_who_when_and_why_and_can_go_back() {
        var line = line(QUAY, Rule.DRYING_H, change(3, QUAY, Rule.DRYING_H, 8.5));

        assertThat(line.value()).isEqualTo("8.5 h");
        assertThat(line.from()).isEqualTo("set by Ida, Mon 13 Apr 09:00: data sheet");
        assertThat(line.ownHere()).isTrue();
        assertThat(line.seenId()).isEqualTo(3);
    }

    @Test
    void what_was_set_back_is_as_imported_and_says_who_did_it() {
        var line = line(QUAY, Rule.SKIN_MIN, change(4, QUAY, Rule.SKIN_MIN, null));

        assertThat(line.value()).isEqualTo("45 min");
        assertThat(line.from())
                .isEqualTo("from the job folder, for this site; set back by Ida, Mon 13 Apr 09:00: data sheet");
        assertThat(line.ownHere()).isFalse();
        assertThat(line.seenId()).isEqualTo(4);
    }

    @Test
    void every_rule_has_words_and_weights_stand_under_everywhere_only() {
        var facts = new RuleSheet.Facts(IMPORTED, IMPORTED, List.of(), ZoneId.of("UTC"));

        assertThat(RuleSheet.of(Speech.ENGLISH, facts, null).lines())
                .hasSize(Rule.values().length)
                .extracting(RuleSheet.Line::name)
                .doesNotHaveDuplicates();
        assertThat(RuleSheet.of(Speech.ENGLISH, facts, QUAY).lines())
                .allMatch(line -> line.rule().ofSite());
    }
}
