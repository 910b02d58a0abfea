package drylap.audit;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.sites.Facade;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Why a task is shut at a facade in a given minute, read straight from the table of section 4. */
final class WallHours {
    private static final double TEST_MIN_C = 1;

    private final SiteSky sky;
    private final Rules rules;
    private final boolean[] drying;

    WallHours(Facade facade, SiteSky sky, Rules rules) {
        this.sky = sky;
        this.rules = rules;
        drying = drying(wetted(facade));
    }

    /** Rain wets a wall when the wind drives enough of it against the wall (ISO 15927-3, L/m² in the hour). */
    private boolean[] wetted(Facade facade) {
        List<ForecastHour> hours = sky.hours();
        boolean[] wetted = new boolean[hours.size()];
        for (int i = 0; i < wetted.length; i++)
            wetted[i] = sky.raining(i) && drivingRain(hours.get(i), facade.azimuthDeg()) >= rules.value(Rule.WETTING);
        return wetted;
    }

    static double drivingRain(ForecastHour hour, double azimuthDeg) {
        double towardsWall = Math.cos(Math.toRadians(hour.windFromDeg() - azimuthDeg));
        if (towardsWall <= 0) return 0;
        return 2.0 / 9 * hour.windMs() * Math.pow(hour.rainMm(), 8.0 / 9) * towardsWall;
    }

    private boolean[] drying(boolean[] wetted) {
        int back = (int) Math.ceil(rules.value(Rule.DRYING_H));
        boolean[] drying = new boolean[wetted.length];
        for (int i = 0; i < wetted.length; i++)
            for (int before = Math.max(0, i - back); before < i; before++) drying[i] |= wetted[before];
        return drying;
    }

    Set<ContractRule> shut(Task task, Instant minute, Duration sunTolerance) {
        Set<ContractRule> why = EnumSet.noneOf(ContractRule.class);
        int index = sky.indexOf(minute);
        if (index >= 0) addWeather(why, task, index);
        if (sky.dark(minute, sunTolerance)) why.add(ContractRule.DARK);
        return why;
    }

    private void addWeather(Set<ContractRule> why, Task task, int index) {
        ForecastHour hour = sky.hours().get(index);
        if (task != Task.TEST && sky.raining(index)) why.add(ContractRule.RAINING);
        if (task == Task.INSTALL && drying[index]) why.add(ContractRule.DRYING);
        if (hour.temperatureC() < leastCelsius(task)) why.add(ContractRule.COLD);
        if (hour.gustMs() > mostGust(task)) why.add(ContractRule.GUST);
    }

    private double leastCelsius(Task task) {
        return switch (task) {
            case INSTALL -> rules.value(Rule.INSTALL_MIN_C);
            case TEST -> TEST_MIN_C;
            case WRAP, CLAD -> Double.NEGATIVE_INFINITY;
        };
    }

    private double mostGust(Task task) {
        return switch (task) {
            case INSTALL, TEST -> rules.value(Rule.INSTALL_GUST);
            case WRAP -> rules.value(Rule.WRAP_GUST);
            case CLAD -> Double.POSITIVE_INFINITY;
        };
    }

    boolean skinCutShort(Task task, Instant end) {
        return task == Task.INSTALL && sky.skinCutShort(end);
    }
}
