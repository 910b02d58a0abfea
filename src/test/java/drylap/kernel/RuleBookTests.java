package drylap.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RuleBookTests {
    private static final SiteId QUAY = new SiteId("quay");
    private static final SiteId MILL = new SiteId("mill");

    @Test
    void a_site_goes_before_everywhere_and_that_before_the_default() {
        var book = RuleBook.STANDARD.with(null, Rule.DRYING_H, 5).with(QUAY, Rule.DRYING_H, 8);

        assertThat(book.at(QUAY).value(Rule.DRYING_H)).isEqualTo(8);
        assertThat(book.at(MILL).value(Rule.DRYING_H)).isEqualTo(5);
        assertThat(book.at(QUAY).value(Rule.SKIN_MIN)).isEqualTo(Rule.SKIN_MIN.standard());
    }

    @Test
    void what_weighs_the_whole_plan_has_no_value_of_a_site() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RuleBook.STANDARD.with(QUAY, Rule.WEIGHT_TRAVEL, 3))
                .withMessageContaining("weight_travel weighs the whole plan");
    }

    @Test
    void a_site_with_nothing_of_its_own_is_no_site_of_the_book() {
        assertThat(new RuleBook(Rules.STANDARD, Map.of(QUAY, Rules.STANDARD))).isEqualTo(RuleBook.STANDARD);
    }

    @Test
    void a_book_within_some_sites_knows_no_other() {
        var book = RuleBook.STANDARD.with(QUAY, Rule.DRYING_H, 8).with(MILL, Rule.DRYING_H, 9);

        assertThat(book.within(Set.of(MILL)).ofSites()).containsOnlyKeys(MILL);
    }
}
