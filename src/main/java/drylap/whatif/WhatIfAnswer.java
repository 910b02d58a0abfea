package drylap.whatif;

import drylap.speech.Saying;

/** Whether scenarios are being compared. */
public sealed interface WhatIfAnswer {
    record Begun() implements WhatIfAnswer {}

    /** @param why which scenario cannot be, what is wrong, and what is accepted; nothing was begun */
    record Refused(Saying why) implements WhatIfAnswer {}
}
