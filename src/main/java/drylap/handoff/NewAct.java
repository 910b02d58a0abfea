package drylap.handoff;

import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.speech.Saying;
import drylap.speech.Unfit;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** An act before it is written down; the person and the moment are added then. */
record NewAct(
        UUID key,
        FolderId folder,
        SiteId site,
        ActKind kind,
        @Nullable HoldPoint holdPoint,
        @Nullable ReturnReason reason,
        String note,
        HandoffAct.@Nullable WaterTest test,
        List<HandoffAct.Entry> entries,
        List<UUID> photos) {
    private static final int LONGEST_NOTE = 2_000;

    NewAct {
        note = note.strip();
        if (note.length() > LONGEST_NOTE)
            throw new Unfit(Saying.of("the note has {0} characters; accepted: up to {1}", note.length(), LONGEST_NOTE));
        if (reason == ReturnReason.OTHER && note.isEmpty())
            throw new Unfit(Saying.of("a return for something else needs a note that says what"));
    }
}
