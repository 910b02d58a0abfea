package drylap.roughopening;

import static drylap.roughopening.RoughPlace.DIAGONAL_FALLING;
import static drylap.roughopening.RoughPlace.DIAGONAL_RISING;

import drylap.speech.Saying;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** All that was measured of one rough opening, in millimetres, exactly as it was typed. */
public record RoughSizes(Map<RoughPlace, BigDecimal> millimetres) {
    /** How far both diagonals together may miss what widths and heights make of them: more is a slip of the pen or the tape. */
    private static final double MISFIT_MM = 25;

    private static final List<RoughPlace> WIDTHS =
            List.of(RoughPlace.WIDTH_SILL, RoughPlace.WIDTH_MIDDLE, RoughPlace.WIDTH_HEAD);
    private static final List<RoughPlace> HEIGHTS =
            List.of(RoughPlace.HEIGHT_LEFT, RoughPlace.HEIGHT_MIDDLE, RoughPlace.HEIGHT_RIGHT);

    /** @throws IllegalArgumentException where one is missing or beyond its bounds */
    public RoughSizes {
        Map<RoughPlace, BigDecimal> all = new EnumMap<>(RoughPlace.class);
        all.putAll(millimetres);
        for (RoughPlace place : RoughPlace.values()) {
            BigDecimal size = all.get(place);
            boolean fits = size != null
                    && size.compareTo(BigDecimal.valueOf(place.leastMm())) >= 0
                    && size.compareTo(BigDecimal.valueOf(place.mostMm())) <= 0;
            if (!fits)
                throw new IllegalArgumentException("%s is %s; accepted: %d to %d mm"
                        .formatted(
                                place.words(),
                                size == null
                                        ? "not given"
                                        : size.stripTrailingZeros().toPlainString() + " mm",
                                place.leastMm(),
                                place.mostMm()));
        }
        millimetres = Map.copyOf(all);
    }

    double at(RoughPlace place) {
        return Objects.requireNonNull(millimetres.get(place)).doubleValue();
    }

    double leastWidth() {
        return all(WIDTHS).min().orElseThrow();
    }

    double mostWidth() {
        return all(WIDTHS).max().orElseThrow();
    }

    double leastHeight() {
        return all(HEIGHTS).min().orElseThrow();
    }

    double mostHeight() {
        return all(HEIGHTS).max().orElseThrow();
    }

    /** By how much the diagonals differ. */
    double outOfSquare() {
        return Math.abs(at(DIAGONAL_RISING) - at(DIAGONAL_FALLING));
    }

    /**
     * Why these numbers cannot all be of one opening; none where they can. In a parallelogram the squares of both diagonals are together
     * twice those of both sides (geometry), so one length that was read or typed wrong stands out.
     */
    public Optional<Saying> misfit() {
        double width = all(WIDTHS).average().orElseThrow();
        double height = all(HEIGHTS).average().orElseThrow();
        double diagonals = Math.hypot(at(DIAGONAL_RISING), at(DIAGONAL_FALLING)) / Math.sqrt(2);
        double wanted = Math.hypot(width, height);
        if (Math.abs(diagonals - wanted) <= MISFIT_MM) return Optional.empty();
        return Optional.of(Saying.of(
                "Diagonals of about {0} mm do not go with these widths and heights, which make {1} mm: measure or type one of them again.",
                Math.round(diagonals), Math.round(wanted)));
    }

    private java.util.stream.DoubleStream all(List<RoughPlace> places) {
        return places.stream().mapToDouble(this::at);
    }

    Stream<Map.Entry<RoughPlace, BigDecimal>> each() {
        return millimetres.entrySet().stream().sorted(Map.Entry.comparingByKey());
    }
}
