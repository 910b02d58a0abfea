package drylap.intake.generate;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import java.util.List;

/** How a site is built; a course now and then departs from it. */
record Habit(Method method, Approach approach, SecondLayer secondLayer, Frame frame) {
    private static final double DEPARTS = 0.15;

    static Habit ofSite(Dice dice) {
        return new Habit(
                dice.pick(List.of(Method.A, Method.A1, Method.A1, Method.B, Method.B1)),
                dice.chance(0.85) ? Approach.DRAINAGE : Approach.BARRIER,
                dice.pick(List.of(SecondLayer.NONE, SecondLayer.NONE, SecondLayer.TUCK, SecondLayer.DRAIN_BETWEEN)),
                dice.pick(List.of(Frame.VINYL, Frame.VINYL, Frame.WOOD, Frame.ALUMINUM, Frame.FIBERGLASS)));
    }

    Habit ofCourse(Dice dice) {
        return dice.chance(DEPARTS) ? ofSite(dice) : this;
    }
}
