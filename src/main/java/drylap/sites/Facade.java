package drylap.sites;

import drylap.kernel.FacadeId;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A wall.
 *
 * @param azimuthDeg the outward normal, degrees clockwise from true north
 * @param handoverDue the date by whose end all its cladding is done
 */
public record Facade(
        FacadeId id, double azimuthDeg, @Nullable LocalDate handoverDue) {
    public Facade {
        if (!(azimuthDeg >= 0 && azimuthDeg <= 360))
            throw new IllegalArgumentException("azimuth %s is outside 0..360 degrees".formatted(azimuthDeg));
    }
}
