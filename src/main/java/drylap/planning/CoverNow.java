package drylap.planning;

import drylap.kernel.OpeningId;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** An opening that stands open and that the plan cannot close before the next rain. */
public record CoverNow(OpeningId opening, @Nullable Instant openSince, Instant nextRain, int minutesToClose) {}
