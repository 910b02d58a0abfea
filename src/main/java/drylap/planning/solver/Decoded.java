package drylap.planning.solver;

import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** Crew lists and the schedule that they decode to, so that who compares lists decodes each of them once. */
record Decoded(CrewLists lists, Schedule schedule) {
    static Decoded of(CrewLists lists) {
        return new Decoded(lists, lists.schedule());
    }

    HardMediumSoftLongScore score() {
        return CrewLists.scoreOf(schedule.tally);
    }

    long medium() {
        return schedule.tally.medium();
    }

    /** This one where both cost the same. */
    Decoded orBetter(Decoded other) {
        return score().compareTo(other.score()) >= 0 ? this : other;
    }
}
