package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The column {@code site} of {@code rules.csv}. */
class SiteRuleRowsTests {
    private final SmallFolder small = new SmallFolder();

    @Test
    void a_row_with_a_site_holds_there_and_a_blank_one_everywhere() {
        small.text("rules.csv", "rule,value,site\ndrying_h,4,\ndrying_h,6,S1\n");

        var rules = small.sound().folder().rules();

        assertThat(rules.everywhere().value(Rule.DRYING_H)).isEqualTo(4);
        assertThat(rules.at(new SiteId("S1")).value(Rule.DRYING_H)).isEqualTo(6);
    }

    @Test
    void a_site_that_is_not_there_is_named() {
        small.text("rules.csv", "rule,value,site\ndrying_h,4,S9\n");

        assertThat(small.problems())
                .containsExactly("rules.csv:2 site: refers to no site (S9) – a site of sites.csv is accepted");
    }

    @Test
    void a_weight_of_a_site_is_named() {
        small.text("rules.csv", "rule,value,site\nweight_travel,4,S1\n");

        assertThat(small.problems())
                .containsExactly("rules.csv:2 site: is given for weight_travel, which weighs the whole plan (S1)"
                        + " – a blank cell is accepted");
    }

    @Test
    void the_same_rule_of_the_same_site_stands_once() {
        small.text("rules.csv", "rule,value,site\ndrying_h,4,S1\ndrying_h,4,\ndrying_h,5,S1\n");

        assertThat(small.problems())
                .containsExactly("rules.csv:4 rule: stands for a rule of line 2 already (drying_h)"
                        + " – each rule once is accepted");
    }

    @Test
    void a_folder_without_rules_of_sites_is_written_as_before() {
        var folder = small.sound().folder();
        assertThat(rules(folder)).isEqualTo("rule,value\ndrying_h,4\n");

        var own = folder.withRules(folder.rules().with(new SiteId("S1"), Rule.SKIN_MIN, 45));
        assertThat(rules(own)).isEqualTo("rule,value,site\ndrying_h,4,\nskin_min,45,S1\n");
        small.text("rules.csv", rules(own));
        assertThat(small.sound().folder()).isEqualTo(own);
    }

    private static String rules(drylap.planning.JobFolder folder) {
        byte[] bytes = FolderWriter.files(folder).get("rules.csv");
        return bytes == null ? "" : new String(bytes, StandardCharsets.UTF_8);
    }
}
