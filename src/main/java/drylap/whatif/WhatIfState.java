package drylap.whatif;

import drylap.planning.PlanProgress;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a comparison stands.
 *
 * @param asked when; the folder was compared as it stood then
 * @param limit how long each plan may be looked for
 * @param courses the folder as it is first, then the scenarios in order
 * @param outcomes in the same order; empty until the end
 */
public record WhatIfState(
        Instant asked,
        List<Scenario> scenarios,
        Duration limit,
        Status status,
        List<Course> courses,
        List<OutcomeFigures> outcomes) {
    public WhatIfState {
        scenarios = List.copyOf(scenarios);
        courses = List.copyOf(courses);
        outcomes = List.copyOf(outcomes);
    }

    public enum Status {
        WAITING,
        PLANNING,
        COMPARED,
        /** Someone ended it early: the plans had unequal time, or there are none. */
        STOPPED,
        FAILED;

        /** Nothing more comes of it. */
        public boolean ended() {
            return this != WAITING && this != PLANNING;
        }
    }

    /** @param progress absent until the planner has a first plan */
    public record Course(String name, @Nullable PlanProgress progress) {}
}
