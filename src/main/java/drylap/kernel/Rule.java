package drylap.kernel;

/** Every number of the trade that a contractor may change in {@code rules.csv}, with its default and where that comes from. */
public enum Rule implements Coded {
    RAIN_P("rain_p", 0.30, "probability", 0, 1, "planning choice of this project"),
    RAIN_MM("rain_mm", 0.2, "mm in an hour", 0, 100, "planning choice of this project"),
    BEYOND_RAIN_P(
            "beyond_rain_p",
            0.08,
            "probability in an hour",
            0,
            1,
            "from memory: it rains in 5 to 12 of 100 hours in temperate climates; set it for the site and the season"),
    RAIN_PERSISTENCE(
            "rain_persistence",
            0.6,
            "correlation of neighbouring hours",
            0,
            0.95,
            "planning choice of this project; hourly rain is known to correlate by 0.5 to 0.8, from memory: solve it for the site"),
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
    LEE_SHARE(
            "lee_share",
            0.05,
            "share of rain that comes straight on",
            0,
            1,
            "deduced: rain is never exactly from one side"),
    RAIN_WARNING_MIN(
            "rain_warning_min", 60, "min", 0, 600, "common practice, no source: rain radar reaches an hour ahead"),
    DURATION_BEST(
            "duration_best",
            0.62,
            "of the labour table's minutes",
            0.1,
            1,
            "assumption: three-point minutes of the steps of A1, 55 against 89; to be set from the contractor's own log"),
    DURATION_WORST(
            "duration_worst",
            1.83,
            "of the labour table's minutes",
            1,
            10,
            "assumption: three-point minutes of the steps of A1, 163 against 89; to be set from the contractor's own log"),
    DELIVERY_WORST_DAYS(
            "delivery_worst_days", 5, "days late", 0, 60, "assumption; to be set from the contractor's own log"),
    WEATHER_CELL_KM("weather_cell_km", 10, "km", 0, 100, "deduced: mesh of a forecast model, 2.5 to 11 km"),
    STOREY_M("storey_m", 3, "m", 2, 10, "common practice, no source"),
    UPWIND_SLOPE("upwind_slope", 0, "rise per length", 0, 2, "level ground, to be set; ISO 15927-3, from memory"),
    OBSTACLE_M(
            "obstacle_m",
            200,
            "m",
            4,
            10_000,
            "none within 120 m, to be set; the table of ISO 15927-3 that it enters is from memory"),
    WALL_FACTOR(
            "wall_factor",
            0.4,
            "share of the rain",
            0.05,
            1,
            "two storeys under a flat roof; uncertain, from memory: check against the table of ISO 15927-3"),
    RAIN_DEPOSITION(
            "rain_deposition",
            0.35,
            "share of the rain",
            0.05,
            1,
            "ASHRAE 160 below a steep roof, from memory; 0.5 below a low one, 1 where water runs off on to the wall"),
    RAIN_ADMITTANCE(
            "rain_admittance",
            0.5,
            "share of the rain",
            0.05,
            2,
            "Straube, about 0.35 to 1 and more at upper corners, from memory"),
    APRON_WIDTH_MM(
            "apron_width_mm",
            228.6,
            "mm",
            100,
            1000,
            "9 in at least, 12 in often recommended: trade texts in the line of AAMA 2400"),
    JAMB_FLASHING_MM("jamb_flashing_mm", 228.6, "mm wide", 100, 1000, "9 in: trade texts in the line of AAMA 2400"),
    HEAD_FLASHING_MM("head_flashing_mm", 228.6, "mm wide", 100, 1000, "9 in: trade texts in the line of AAMA 2400"),
    HEAD_PAST_JAMBS_MM(
            "head_past_jambs_mm",
            25.4,
            "mm at each end",
            0,
            300,
            "about 2 in for both ends, from memory of ASTM E2112; the outer edges of the jamb flashing at least"),
    PAN_WIDTH_MM("pan_width_mm", 228.6, "mm wide", 50, 1000, "9 in; common practice, no source"),
    PAN_TURN_UP_MM("pan_turn_up_mm", 152.4, "mm up each jamb", 0, 600, "6 in: trade articles, 6 to 8 in some guides"),
    STRIP_ROLL_M("strip_roll_m", 22.86, "m", 1, 200, "75 ft; common practice, no source"),
    STRIP_LAP_MM(
            "strip_lap_mm",
            152.4,
            "mm where two pieces of a strip meet",
            25,
            500,
            "6 in as at upright joints of the barrier, IRC R703.2; for strips common practice, no source: the strip maker's instructions govern"),
    BEAD_MM("bead_mm", 9.525, "mm across", 3, 30, "3/8 in, from memory of AAMA 2400"),
    CARTRIDGE_ML("cartridge_ml", 300, "ml", 50, 2000, "10.1 fl oz; common practice, no source"),
    FASTENER_SPACING_MM(
            "fastener_spacing_mm",
            406.4,
            "mm at most",
            50,
            1000,
            "16 in, from memory of ASTM E2112; the window maker's instructions govern"),
    ROUGH_CLEARANCE_MM(
            "rough_clearance_mm",
            12.7,
            "mm wider and higher than the frame",
            0,
            100,
            "1/4 in at each side: trade guides, one up to 1/2 in; the window maker's instructions govern"),
    ROUGH_LEAST_GAP_MM(
            "rough_least_gap_mm",
            6.35,
            "mm in all",
            0,
            100,
            "1/8 in at each side; common practice, no source; the window maker's instructions govern"),
    ROUGH_MOST_GAP_MM(
            "rough_most_gap_mm",
            25.4,
            "mm in all",
            0,
            200,
            "1/2 in at each side, the largest that a trade guide names; the flange and the window maker's instructions govern"),
    ROUGH_SQUARE_MM(
            "rough_square_mm", 3.175, "mm", 0, 50, "1/8 in between the diagonals: a trade guide; another says 1/4 in"),
    PLUMB_2FT_MM("plumb_2ft_mm", 1.5875, "mm", 0, 50, "1/16 in over 2 ft: a window maker's dimension guide"),
    PLUMB_4FT_MM("plumb_4ft_mm", 3.175, "mm", 0, 50, "1/8 in over 4 ft or more: a window maker's dimension guide"),
    TAKE_OFF_WASTE("take_off_waste", 0.05, "share of the sealant", 0, 1, "common practice, no source"),
    WEIGHT_LATE_HANDOVER("weight_late_handover", 200, "per hour", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_CREW_DAYS("weight_crew_days", 400, "per crew-day", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_TRAVEL("weight_travel", 2, "per minute", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_SETUP("weight_setup", 1, "per minute", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_OVERTIME("weight_overtime", 3, "per minute", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_OPEN_COURSE("weight_open_course", 5, "per hour", 0, 1_000_000, "planning choice of this project"),
    WEIGHT_RAIN_RISK("weight_rain_risk", 2, "per thousandth", 0, 1_000_000, "planning choice of this project"),
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
