package drylap.weather;

import drylap.sites.Facade;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The rain that a forecast drives on to one wall, hour by hour, if it rains as told.
 *
 * @param hours those that drive any, in order
 */
public record WallExposure(Facade facade, WallSetting setting, List<Hour> hours) {
    /** An hour and what it drives on to the wall. */
    public record Hour(Instant start, ModelRange litres) {}

    /**
     * A wall's place among the walls of its site, 1 being the wettest.
     *
     * @param first the place by the model that sees it worst
     * @param last the place by the model that sees it best
     */
    public record Place(int first, int last, int of) {}

    public WallExposure {
        hours = List.copyOf(hours);
    }

    /** Of the forecast's hours from a time on. */
    public static WallExposure of(Facade facade, WallSetting setting, Forecast forecast, Instant from) {
        List<Hour> hours = new ArrayList<>();
        for (ForecastHour hour : forecast.hours()) {
            if (hour.start().plus(ForecastRain.HOUR).isAfter(from)) {
                ModelRange litres = ModelRange.of(hour, facade.azimuthDeg(), setting);
                if (litres.most() > 0) hours.add(new Hour(hour.start(), litres));
            }
        }
        return new WallExposure(facade, setting, hours);
    }

    public ModelRange total() {
        return hours.stream().map(Hour::litres).reduce(ModelRange.DRY, ModelRange::plus);
    }

    /** The hour that drives most on to the wall, by ISO 15927-3. */
    public Optional<Hour> wettest() {
        return hours.stream()
                .max((one, other) ->
                        Double.compare(one.litres().iso(), other.litres().iso()));
    }

    /** Its place among all walls of the site, of which it is one. */
    public Place among(List<WallExposure> walls) {
        int[] places = {place(walls, ModelRange::iso), place(walls, ModelRange::ashrae), place(walls, ModelRange::drops)
        };
        Arrays.sort(places);
        return new Place(places[0], places[2], walls.size());
    }

    private int place(List<WallExposure> walls, ToDoubleFunction<ModelRange> model) {
        double mine = model.applyAsDouble(total());
        return 1
                + (int) walls.stream()
                        .filter(wall -> model.applyAsDouble(wall.total()) > mine)
                        .count();
    }
}
