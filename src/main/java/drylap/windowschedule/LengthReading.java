package drylap.windowschedule;

import java.math.BigDecimal;

/** What came of reading a length. */
public sealed interface LengthReading {
    /** @param millimetres exactly: every fraction of an inch that is accepted ends in decimals */
    record Read(BigDecimal millimetres) implements LengthReading {}

    /** A number without a unit, and none was said for the column. */
    record NoUnit() implements LengthReading {}

    record Wrong(String wrong) implements LengthReading {}
}
