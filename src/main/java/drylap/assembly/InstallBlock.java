package drylap.assembly;

import java.util.List;

/** The steps that are begun only when all of them fit one dry spell, the daylight and the shift. */
public record InstallBlock(List<Step> steps, RainRating after) {

    /** From the first cut or strip to the first step after which the opening may be left. */
    public static InstallBlock of(Variant variant) {
        var sequence = StepOrder.of(variant).sequence();
        int first = sequence.indexOf(Step.ACCEPT) + 1;
        int last = first;
        while (!ratingAfter(variant, sequence, last).mayBeLeft()) last++;
        return new InstallBlock(sequence.subList(first, last + 1), ratingAfter(variant, sequence, last));
    }

    private static RainRating ratingAfter(Variant variant, List<Step> sequence, int index) {
        return RainCheck.of(AsBuilt.of(variant, sequence.subList(0, index + 1))).rating();
    }
}
