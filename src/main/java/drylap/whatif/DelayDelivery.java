package drylap.whatif;

import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The windows of a facade, or that of one opening, come some days later. */
public record DelayDelivery(
        @Nullable FacadeId facade, @Nullable OpeningId opening, int days) implements Change {
    public DelayDelivery {
        if ((facade == null) == (opening == null))
            throw new IllegalArgumentException("a delivery is delayed for a facade or for an opening, one of both");
        if (days < 1)
            throw new IllegalArgumentException("a delivery is delayed by %d days, not 1 or more".formatted(days));
    }

    @Override
    public JobFolder applyTo(JobFolder folder) {
        if (folder.openings().stream().noneMatch(this::meant))
            throw opening == null
                    ? CannotBe.NO_OPENING_ON.with(Objects.requireNonNull(facade))
                    : CannotBe.NO_OPENING.with(opening);
        return folder.withOpenings(folder.openings().stream()
                .map(one -> meant(one) ? one.deliveredOn(one.deliveredOn().plusDays(days)) : one)
                .toList());
    }

    private boolean meant(Opening one) {
        return opening != null ? one.id().equals(opening) : one.facade().equals(facade);
    }
}
