package drylap.platform;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Turns a failed start into two sentences instead of a stack trace. */
final class DatabaseTroubleAnalyzer extends AbstractFailureAnalyzer<DatabaseTrouble> {
    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, DatabaseTrouble trouble) {
        return new FailureAnalysis(trouble.getMessage(), trouble.remedy(), trouble);
    }
}
