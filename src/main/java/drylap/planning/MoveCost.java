package drylap.planning;

import drylap.speech.Saying;

/** What it would cost to move a visit in one way, found by planning again with the visit held there. */
public sealed interface MoveCost {
    /** The move in words. */
    Saying move();

    /**
     * The move can be made.
     *
     * @param to where the visit would be
     * @param plan the plan around it
     * @param more against the plan at hand; less than nothing where planning again found a cheaper plan
     */
    record Possible(Saying move, Visit to, Plan plan, CostDifference more) implements MoveCost {}

    /** There is no legal place of that kind; {@code rule} says why. */
    record NoPlace(Saying move, Saying rule) implements MoveCost {}
}
