package drylap.risk;

/** A part of the job that odds rest on. */
public enum OddsPart {
    /** What is done at the openings. */
    LOG,
    FORECASTS,
    /** The monthly normals that were brought in. */
    NORMALS,
    /** The labour table. */
    DURATIONS,
    RULES,
    /** Which crews come when. */
    SHIFTS,
    /** What is still to do goes on from the day of the reckoning. */
    DAY
}
