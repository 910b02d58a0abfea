package drylap.intake.generate;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.crews.TravelTimes;
import drylap.kernel.Rules;
import drylap.planning.JobFolder;
import drylap.planning.StandardLabour;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.weather.Forecast;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;

/** A season of an invented contractor on an invented coast: the whole folder, part by part, from one seed. */
public final class Season {
    static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);
    static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");
    /** Three weeks, Sundays off. */
    static final int DAYS = 20;

    private Season() {}

    public static JobFolder of(int openings, int sites, long seed) {
        Dice dice = new Dice(seed);
        Coast coast = Coast.of(sites);
        List<Site> places = coast.sites(dice.split());
        Walls walls = Walls.of(places, openings, dice.split());
        List<Opening> all = walls.openings();
        List<Crew> crews = CrewPool.sizedFor(all, coast, dice.split());
        List<Shift> shifts = CrewPool.shifts(crews, dice.split());
        List<Forecast> forecasts = Weather.over(coast, places, dice.split());
        return new JobFolder(
                places,
                walls.facades(),
                all,
                crews,
                shifts,
                new TravelTimes(Map.of()),
                forecasts,
                StandardLabour.TABLE,
                Rules.STANDARD,
                List.of());
    }
}
