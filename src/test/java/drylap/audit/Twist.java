package drylap.audit;

import drylap.crews.Shift;
import drylap.crews.TravelTimes;
import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Predicate;

/** Makes a friendly job folder awkward: fewer shifts, worse weather, openings left open, other rules, roads not given. */
record Twist(Random dice) {
    JobFolder awkward(JobFolder folder) {
        boolean roads = dice.nextBoolean();
        return new JobFolder(
                folder.sites(),
                folder.facades(),
                folder.openings().stream()
                        .map(opening -> opening(opening, folder))
                        .toList(),
                folder.crews(),
                folder.shifts().stream().filter(some(0.7)).map(this::shift).toList(),
                roads ? folder.travel() : new TravelTimes(Map.of()),
                folder.forecasts().stream().map(this::forecast).toList(),
                folder.labour(),
                rules(folder),
                folder.published());
    }

    private <T> Predicate<T> some(double share) {
        return _ -> dice.nextDouble() < share;
    }

    private Opening opening(Opening opening, JobFolder folder) {
        if (dice.nextDouble() < 0.6) return opening;
        Design design = Design.like(opening).priority(dice.nextInt(3));
        int step = dice.nextInt(opening.stepList().last() + 1);
        Instant first = folder.shifts().stream()
                .map(Shift::startsAt)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        Instant before = first.minus(Duration.ofHours(dice.nextInt(1, 200)));
        return design.done(step, step > 0 && dice.nextBoolean() ? before : null).opening();
    }

    private Shift shift(Shift shift) {
        if (dice.nextDouble() < 0.8) return shift;
        return new Shift(
                shift.crew(),
                shift.date(),
                shift.start(),
                shift.end(),
                shift.breakStart(),
                shift.breakEnd(),
                shift.end().plusMinutes(dice.nextInt(1, 180)),
                shift.zone());
    }

    private Forecast forecast(Forecast forecast) {
        List<ForecastHour> hours = forecast.hours().stream().map(this::rougher).toList();
        return new Forecast(forecast.site(), hours.subList(0, dice.nextInt(hours.size() + 1)));
    }

    private ForecastHour rougher(ForecastHour hour) {
        if (dice.nextDouble() < 0.9) return hour;
        return new ForecastHour(
                hour.start(),
                dice.nextInt(20) / 10.0,
                dice.nextInt(101) / 100.0,
                dice.nextInt(12),
                dice.nextInt(16),
                dice.nextInt(361),
                dice.nextInt(-2, 20),
                80);
    }

    /** Some sites with rules of their own. */
    private RuleBook rules(JobFolder folder) {
        Map<SiteId, Rules> own = new HashMap<>();
        for (Site site : folder.sites()) if (dice.nextBoolean()) own.put(site.id(), ofSite());
        Rules everywhere = ofSite();
        if (dice.nextBoolean()) everywhere = everywhere.with(Rule.WEIGHT_OVERTIME, dice.nextInt(20));
        return new RuleBook(everywhere, own);
    }

    private Rules ofSite() {
        Rules rules = Rules.STANDARD;
        if (dice.nextBoolean()) rules = rules.with(Rule.DRYING_H, dice.nextInt(13) / 2.0);
        if (dice.nextBoolean()) rules = rules.with(Rule.BEYOND_RAIN_P, dice.nextInt(100) / 100.0);
        if (dice.nextBoolean()) rules = rules.with(Rule.RAIN_PERSISTENCE, dice.nextInt(96) / 100.0);
        if (dice.nextBoolean()) rules = rules.with(Rule.SKIN_MIN, dice.nextInt(91));
        if (dice.nextBoolean()) rules = rules.with(Rule.DUSK_MARGIN_MIN, dice.nextInt(180));
        if (dice.nextBoolean()) rules = rules.with(Rule.APRON_MAX_DAYS, dice.nextInt(1, 10));
        if (dice.nextBoolean()) rules = rules.with(Rule.BARE_MAX_DAYS, dice.nextInt(1, 10));
        if (dice.nextBoolean()) rules = rules.with(Rule.CURE_BEFORE_TEST_H, dice.nextInt(72));
        return rules;
    }

    /** The plan as people have it, with some of the installs ahead pinned; a pin elsewhere could contradict the rest. */
    List<PublishedVisit> published(Plan plan, Instant now) {
        return plan.visits().stream()
                .map(visit -> new PublishedVisit(visit, pinned(visit, now)))
                .toList();
    }

    private boolean pinned(Visit visit, Instant now) {
        return visit.task() == Task.INSTALL && !visit.start().isBefore(now) && dice.nextDouble() < 0.2;
    }

    Instant momentOf(Plan plan) {
        long minutes = Duration.between(plan.start(), plan.horizonEnd()).toMinutes();
        return plan.start().plus(Duration.ofMinutes(dice.nextLong(minutes / 2 + 1)));
    }
}
