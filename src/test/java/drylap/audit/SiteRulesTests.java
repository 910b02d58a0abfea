package drylap.audit;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.FacadeId;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.sites.Facade;
import drylap.weather.Forecast;
import drylap.weather.SiteWeather;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** The mill has a stricter rule than the quay; the forecaster and the audit, which share no arithmetic, must both see it there only. */
class SiteRulesTests {
    private static final SiteId MILL = new SiteId("mill");
    private static final TimeWindow SPAN = new TimeWindow(TwoSites.at("13 00:00"), TwoSites.at("16 00:00"));

    /** Rain of 0.5 mm at 0.5 falls on the mill on Monday from 15 to 16; at 5 mm it counts as rain no more, so this way is laxer. */
    private final JobFolder everywhere = TwoSites.folder();

    private final JobFolder stricter = everywhere.withRules(
            everywhere.rules().with(MILL, Rule.INSTALL_GUST, 8).with(MILL, Rule.RAIN_P, 0));

    private final JobFolder laxer = everywhere.withRules(everywhere.rules().with(MILL, Rule.RAIN_MM, 5));

    @Test
    void a_stricter_rule_of_a_site_shuts_hours_there_by_weather_and_by_audit() {
        assertThat(forecaster(stricter, TwoSites.MILL_WEST))
                .as("gusts of 10 on two hours of Tuesday")
                .isEqualTo(forecaster(everywhere, TwoSites.MILL_WEST) - 120);
        assertThat(auditor(stricter, TwoSites.MILL_WEST)).isEqualTo(auditor(everywhere, TwoSites.MILL_WEST) - 120);
    }

    @Test
    void a_laxer_rain_rule_of_a_site_opens_hours_there_by_weather_and_by_audit() {
        assertThat(forecaster(laxer, TwoSites.MILL_WEST))
                .as("the hour of rain and the 30 minutes of skin before it")
                .isEqualTo(forecaster(everywhere, TwoSites.MILL_WEST) + 90);
        assertThat(auditor(laxer, TwoSites.MILL_WEST)).isEqualTo(auditor(everywhere, TwoSites.MILL_WEST) + 60);
    }

    @Test
    void the_other_site_is_as_it_was() {
        for (FacadeId wall : new FacadeId[] {TwoSites.QUAY_NORTH, TwoSites.QUAY_EAST})
            for (JobFolder changed : new JobFolder[] {stricter, laxer}) {
                assertThat(forecaster(changed, wall)).isEqualTo(forecaster(everywhere, wall));
                assertThat(auditor(changed, wall)).isEqualTo(auditor(everywhere, wall));
            }
    }

    /** A wrap of the mill's course three days after the install breaks a limit of one day there, and no limit of the quay. */
    @Test
    void limits_between_tasks_are_the_sites_own() {
        var legal = Case.legal();
        assertThat(legal.audit().breaches()).isEmpty();

        var cure = legal.rule(new SiteId("quay"), Rule.CURE_BEFORE_TEST_H, 200).audit();
        assertThat(cure.breaches()).extracting(Breach::rule).contains(ContractRule.CURE);
        var elsewhere = legal.rule(MILL, Rule.CURE_BEFORE_TEST_H, 200).audit();
        assertThat(elsewhere.breaches()).extracting(Breach::rule).doesNotContain(ContractRule.CURE);

        var apron = legal.rule(MILL, Rule.APRON_MAX_DAYS, 0).audit();
        assertThat(apron.breaches()).extracting(Breach::rule).contains(ContractRule.APRON);
        assertThat(apron.breaches())
                .filteredOn(breach -> breach.rule() == ContractRule.APRON)
                .allMatch(breach -> breach.toString().contains("M"));
    }

    private static long forecaster(JobFolder folder, FacadeId wall) {
        var site = folder.sites().stream()
                .filter(one -> one.id().equals(wall.site()))
                .findFirst()
                .orElseThrow();
        Forecast forecast = folder.forecasts().stream()
                .filter(one -> one.site().equals(site.id()))
                .findFirst()
                .orElseThrow();
        return SiteWeather.of(site, forecast, folder.rules().at(site.id()), SPAN)
                .openHours(facade(folder, wall))
                .windows(Task.INSTALL)
                .stream()
                .mapToLong(window -> window.length().toMinutes())
                .sum();
    }

    /** Skin time shuts ends of work only, so the audit counts no minute of it. */
    private static long auditor(JobFolder folder, FacadeId wall) {
        var hours = new Skies(new JobBook(folder, null)).at(wall);
        long open = 0;
        for (Instant minute = SPAN.from(); minute.isBefore(SPAN.until()); minute = minute.plus(Duration.ofMinutes(1)))
            if (hours.shut(Task.INSTALL, minute, Duration.ZERO).isEmpty()) open++;
        return open;
    }

    private static Facade facade(JobFolder folder, FacadeId wall) {
        return folder.facades().stream()
                .filter(one -> one.id().equals(wall))
                .findFirst()
                .orElseThrow();
    }
}
