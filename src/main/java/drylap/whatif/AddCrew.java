package drylap.whatif;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.crews.TravelTimes;
import drylap.crews.TravelTimes.Leg;
import drylap.kernel.CrewId;
import drylap.planning.JobFolder;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** One more crew, with the trade, training, base, roads and hours of one that is there, from a date on. */
public record AddCrew(CrewId crew, CrewId like, LocalDate from) implements Change {
    @Override
    public JobFolder applyTo(JobFolder folder) {
        if (folder.crews().stream().anyMatch(one -> one.id().equals(crew))) throw CannotBe.CREW_THERE.with(crew);
        Crew model = folder.crews().stream()
                .filter(one -> one.id().equals(like))
                .findFirst()
                .orElseThrow(() -> CannotBe.NO_CREW.with(like));
        Crew more = new Crew(crew, model.trade(), model.methods(), model.base(), model.zone(), model.people());
        List<Shift> days = folder.shifts().stream()
                .filter(shift -> shift.crew().equals(like) && !shift.date().isBefore(from))
                .map(this::own)
                .toList();
        return new JobFolder(
                folder.sites(),
                folder.facades(),
                folder.openings(),
                Stream.concat(folder.crews().stream(), Stream.of(more)).toList(),
                Stream.concat(folder.shifts().stream(), days.stream()).toList(),
                roads(folder.travel()),
                folder.forecasts(),
                folder.labour(),
                folder.rules(),
                folder.published());
    }

    private Shift own(Shift s) {
        return new Shift(crew, s.date(), s.start(), s.end(), s.breakStart(), s.breakEnd(), s.overtimeUntil(), s.zone());
    }

    private TravelTimes roads(TravelTimes travel) {
        Map<Leg, Integer> legs = new HashMap<>(travel.given());
        travel.given().forEach((leg, minutes) -> {
            if (leg.from().equals(like.value())) legs.put(new Leg(crew.value(), leg.to()), minutes);
            if (leg.to().equals(like.value())) legs.put(new Leg(leg.from(), crew.value()), minutes);
        });
        return new TravelTimes(legs);
    }
}
