package drylap.kernel;

/** Every number of the trade that a contractor may change in {@code rules.csv}, with its default and where that comes from. */
public enum Rule implements Coded {
    RAIN_P("rain_p", 0.30, "probability", 0, 1, "planning choice of this project"),
    RAIN_MM("rain_mm", 0.2, "mm in an hour", 0, 100, "planning choice of this project"),
    WETTING("wetting_l_m2", 0.05, "L/m² in an hour", 0, 100, "planning choice of this project"),
    DRYING_H("drying_h", 3, "h", 0, 72, "common practice, no source"),
    INSTALL_MIN_C("install_min_c", 4.4, "°C", -40, 40, "UFGS 07 92 00: sealant at 40 °F or warmer"),
    INSTALL_GUST(
            "install_gust_m_s",
            11,
            "m/s",
            0,
            60,
            "common practice, no source; below the platform limit of ANSI A92.20"),
    WRAP_GUST("wrap_gust_m_s", 9, "m/s", 0, 60, "common practice, no source"),
    DUSK_MARGIN_MIN("dusk_margin_min", 30, "min", 0, 240, "common practice, no source"),
    SKIN_MIN("skin_min", 30, "min", 0, 600, "usual skin-over time of one-part silicone, 15 to 30 min"),
    CURE_BEFORE_TEST_H(
            "cure_before_test_h",
            24,
            "h",
            0,
            2160,
            "lower end of full cure, 24 to 72 h; the maker's data sheet governs"),
    APRON_MAX_DAYS(
            "apron_max_days",
            60,
            "days",
            0,
            3650,
            "low end of usual barrier exposure limits; the maker's data sheet governs"),
    BARE_MAX_DAYS("bare_max_days", 14, "days", 0, 3650, "planning choice of this project"),
    APRON_UV_DAYS(
            "apron_uv_days",
            30,
            "days",
            0,
            3650,
            "low end for flashing tape, 30 to 180 days, from memory; the maker's data sheet governs"),
    BARRIER_UV_DAYS(
            "barrier_uv_days",
            60,
            "days",
            0,
            3650,
            "low end for barriers, 60 to 180 days, weak source: general articles; the maker's data sheet governs"),
    COVER_MIN(
            "cover_min",
            8,
            "min",
            0,
            600,
            "assumption, 5 to 15 for two persons; to be set from the contractor's own log"),
    COVER_LETS_IN(
            "cover_lets_in", 0.1, "share of the rain", 0, 1, "planning choice of this project, where laps stand open"),
    LEE_SHARE("lee_share", 0.05, "share of head-on rain", 0, 1, "deduced: rain is never exactly from one side"),
    WEIGHT_LATE_HANDOVER("weight_late_handover", 200, "per hour", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_CREW_DAYS("weight_crew_days", 400, "per crew-day", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_TRAVEL("weight_travel", 2, "per minute", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_SETUP("weight_setup", 1, "per minute", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_OVERTIME("weight_overtime", 3, "per minute", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_OPEN_COURSE("weight_open_course", 5, "per hour", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_RAIN_RISK("weight_rain_risk", 100, "per thousandth", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_CHANGED("weight_changed", 50, "per task", 0, 1_000_000, "planning choice of this project");

    private final String code;
    private final double standard;
    private final String unit;
    private final double least;
    private final double most;
    private final String source;

    Rule(String code, double standard, String unit, double least, double most, String source) {
        this.code = code;
        this.standard = standard;
        this.unit = unit;
        this.least = least;
        this.most = most;
        this.source = source;
    }

    @Override
    public String code() {
        return code;
    }

    public double standard() {
        return standard;
    }

    public String unit() {
        return unit;
    }

    public double least() {
        return least;
    }

    public double most() {
        return most;
    }

    public String source() {
        return source;
    }

    /** May have a value of its own at a site; what weighs the whole plan may not. */
    public boolean ofSite() {
        return !whole();
    }

    /** Weights of the plan's ledger are whole numbers, so that costs add up exactly. */
    public boolean whole() {
        return code.startsWith("weight_");
    }
}
