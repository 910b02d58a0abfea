package drylap.api.v1;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BudgetTests {
    @Test
    void each_token_has_its_own_budget_and_no_more() {
        var budget = new Budget(2);

        assertThat(budget.spend(1)).isTrue();
        assertThat(budget.spend(1)).isTrue();
        assertThat(budget.spend(1)).isFalse();
        assertThat(budget.spend(2)).isTrue();
    }
}
