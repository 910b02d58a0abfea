package drylap.planning.solver;

/**
 * A start of an install.
 *
 * @param minute until which it waits
 * @param risk the chance of rain over it in thousandths; {@link DryStart#NO_PLACE} where it does not fit any more
 */
record DryMoment(int minute, int risk) {}
