package drylap.intake;

import drylap.intake.csv.Header;
import java.util.List;

/** The files of the contract: their names, and their columns as `src/docs/planning.md` states them. */
final class ContractFiles {
    static final Header SITES =
            Header.of("sites.csv", "site", "name", "latitude", "longitude", "time_zone", "terrain?", "address?");
    static final Header FACADES = Header.of("facades.csv", "site", "facade", "azimuth_deg", "handover_due?");
    static final Header OPENINGS = Header.of(
            "openings.csv",
            "site",
            "facade",
            "level",
            "opening",
            "width_mm",
            "height_mm",
            "frame",
            "method",
            "approach",
            "second_layer",
            "delivered_on",
            "water_test?",
            "priority?",
            "done?",
            "done_at?",
            "finished?");
    static final Header CREWS =
            Header.of("crews.csv", "crew", "trade", "methods?", "latitude", "longitude", "time_zone", "people?");
    static final Header SHIFTS =
            Header.of("shifts.csv", "crew", "date", "start", "end", "break_start?", "break_end?", "overtime_until?");
    static final Header TRAVEL = Header.of("travel.csv", "from", "to", "minutes");
    static final Header FORECAST = Header.of(
            "forecast.csv",
            "site",
            "hour_start",
            "rain_mm",
            "rain_probability",
            "wind_m_s",
            "gust_m_s",
            "wind_from_deg",
            "temperature_c",
            "relative_humidity",
            "chance_from?");
    static final Header LABOUR = Header.of(
            "labour.csv",
            "task",
            "method",
            "fixed_min",
            "per_m2_min",
            "pan_min",
            "setup_site_min",
            "setup_facade_min",
            "setup_level_min");
    static final Header RULES = Header.of("rules.csv", "rule", "value", "site?");
    static final Header PUBLISHED = Header.of(
            "published.csv",
            "crew",
            "date",
            "sequence",
            "site",
            "facade",
            "level",
            "opening",
            "task",
            "start",
            "end",
            "pinned?");

    static final Header VISITS = Header.of(
            "visits.csv", "crew", "date", "sequence", "site", "facade", "level", "opening", "task", "start", "end");
    static final Header UNPLANNED = Header.of("unplanned.csv", "opening", "task", "reason", "detail?");
    static final Header COVER_NOW =
            Header.of("cover_now.csv", "opening", "open_since?", "next_rain", "minutes_to_close");
    static final Header OPEN_HOURS = Header.of("open_hours.csv", "site", "facade", "task", "from", "until");
    static final Header LEDGER = Header.of("ledger.csv", "term", "amount?", "weight?", "cost");

    static final List<String> JOB =
            List.of(SITES, FACADES, OPENINGS, CREWS, SHIFTS, TRAVEL, FORECAST, LABOUR, RULES, PUBLISHED).stream()
                    .map(Header::file)
                    .toList();
    static final List<String> PLAN = List.of(VISITS, UNPLANNED, COVER_NOW, OPEN_HOURS, LEDGER).stream()
            .map(Header::file)
            .toList();
    static final List<String> ALL =
            java.util.stream.Stream.concat(JOB.stream(), PLAN.stream()).toList();

    private ContractFiles() {}
}
