package drylap.ui.drawn;

import drylap.kernel.SiteId;
import drylap.kernel.TimeWindow;
import drylap.planning.Visit;
import drylap.ui.drawn.Week.Sky;
import drylap.weather.SiteWeather;
import java.util.ArrayList;
import java.util.List;

/** Rain, dark and the forecast's end of one day, between two of its minutes. */
final class SkyOfDay {
    private SkyOfDay() {}

    static List<Sky> of(SiteWeather weather, DayClock clock, int from, int until) {
        List<Sky> sky = new ArrayList<>();
        weather.dark().stream().filter(clock::meets).forEach(w -> add(sky, "dark", w, clock, from, until));
        weather.raining().stream().filter(clock::meets).forEach(w -> add(sky, "rain", w, clock, from, until));
        add(sky, "beyond", clock.minute(weather.forecastEnd()), DayClock.MINUTES, from, until);
        return List.copyOf(sky);
    }

    /** Above a crew stands the sky of the site where it works; half-way between two sites it changes. */
    static List<Sky> overTheCrew(FolderShown shown, List<Visit> visits, DayClock clock) {
        List<Sky> sky = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < visits.size(); i++) {
            SiteId site = visits.get(i).facade().site();
            boolean last = i == visits.size() - 1;
            if (!last && visits.get(i + 1).facade().site().equals(site)) continue;
            int until = last
                    ? DayClock.MINUTES
                    : (clock.minute(visits.get(i).end())
                                    + clock.minute(visits.get(i + 1).start()))
                            / 2;
            sky.addAll(of(shown.weather(site), clock, from, until));
            from = until;
        }
        return List.copyOf(sky);
    }

    private static void add(List<Sky> sky, String kind, TimeWindow window, DayClock clock, int from, int until) {
        add(sky, kind, clock.minute(window.from()), clock.minute(window.until()), from, until);
    }

    private static void add(List<Sky> sky, String kind, int start, int end, int from, int until) {
        int first = Math.max(start, from);
        int last = Math.min(end, until);
        if (first < last) sky.add(new Sky(kind, first, last));
    }
}
