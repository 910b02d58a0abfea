package drylap.demo;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Turns a refused start into a sentence instead of a stack trace. */
final class DemoPeopleRefusedAnalyzer extends AbstractFailureAnalyzer<DemoPeopleRefused> {
    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, DemoPeopleRefused refused) {
        return new FailureAnalysis(refused.getMessage(), "", refused);
    }
}
