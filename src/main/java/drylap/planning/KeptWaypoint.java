package drylap.planning;

import java.time.Duration;

/**
 * Where a run stood when that was last written down.
 *
 * @param elapsed how long it had searched by then
 * @param moves how many it had tried
 */
record KeptWaypoint(Duration elapsed, long moves, Waypoint place) {}
