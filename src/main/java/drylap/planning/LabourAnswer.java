package drylap.planning;

import drylap.assembly.Method;
import drylap.kernel.Coded;
import java.math.BigDecimal;
import java.time.Instant;

/**
 * What someone answered to other install minutes of a method.
 *
 * @param factor of the imported minutes
 * @param openings the installs that the factor was learnt from
 */
public record LabourAnswer(long id, Method method, Kind kind, BigDecimal factor, int openings, String by, Instant at) {
    /** A refusal changes nothing; a withdrawal goes back to the imported minutes. */
    public enum Kind implements Coded {
        ACCEPTED("accepted"),
        DECLINED("declined"),
        WITHDRAWN("withdrawn");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }
}
