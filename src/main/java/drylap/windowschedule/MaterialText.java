package drylap.windowschedule;

import drylap.assembly.Frame;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a frame is made of, as schedules write it; common practice, no source. */
final class MaterialText {
    static final String ACCEPTED = ScheduleSaid.MATERIALS.with();

    private static final Map<Frame, Set<String>> SPELLINGS = Map.of(
            Frame.WOOD,
                    Set.of(
                            "wood",
                            "timber",
                            "wd",
                            "clad wood",
                            "wood clad",
                            "aluminum clad wood",
                            "aluminium clad wood"),
            Frame.ALUMINUM,
                    Set.of(
                            "aluminum",
                            "aluminium",
                            "alum",
                            "alu",
                            "al",
                            "thermally broken aluminum",
                            "thermally broken aluminium"),
            Frame.VINYL, Set.of("vinyl", "pvc", "upvc", "pvc u", "vyl"),
            Frame.FIBERGLASS, Set.of("fiberglass", "fibreglass", "frp", "grp", "fg"));

    private MaterialText() {}

    static Optional<Frame> read(String text) {
        String words = TypedText.words(text);
        return SPELLINGS.entrySet().stream()
                .filter(entry -> entry.getValue().contains(words))
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
