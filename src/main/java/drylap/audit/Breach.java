package drylap.audit;

import drylap.speech.Saying;

/**
 * One place at which a plan departs from the contract.
 *
 * @param where crew, day, task and opening, or the line of a list
 * @param what what stands there and what would be right, in words
 */
public record Breach(ContractRule rule, Saying where, Saying what) {
    @Override
    public String toString() {
        return "[%s] %s: %s (rule: %s)".formatted(rule.section(), where, what, rule.words());
    }
}
