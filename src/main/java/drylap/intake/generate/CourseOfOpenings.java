package drylap.intake.generate;

import drylap.assembly.StepList;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.sites.Opening;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** One row of openings; the windows of a course come on one lorry, and look alike. */
record CourseOfOpenings(FacadeId facade, int level, int length) {
    private static final List<Integer> WIDTHS_MM = List.of(600, 900, 900, 1200, 1500, 1800);
    private static final List<Integer> HEIGHTS_MM = List.of(900, 1200, 1200, 1500);
    private static final double INSTALLED = 0.05;
    private static final double TESTED = 0.04;

    List<Opening> openings(Habit siteHabit, Dice dice) {
        Habit habit = siteHabit.ofCourse(dice);
        int width = dice.pick(WIDTHS_MM);
        int height = dice.pick(HEIGHTS_MM);
        LocalDate delivered = Season.MONDAY.plusDays(dice.chance(0.75) ? -dice.whole(1, 10) : dice.whole(0, 4));
        List<Opening> openings = new ArrayList<>();
        for (int place = 1; place <= length; place++)
            openings.add(
                    opening(place, dice.chance(0.8) ? width : dice.pick(WIDTHS_MM), height, habit, delivered, dice));
        return openings;
    }

    private Opening opening(int place, int width, int height, Habit habit, LocalDate delivered, Dice dice) {
        boolean installed = delivered.isBefore(Season.MONDAY.minusDays(4)) && dice.chance(INSTALLED);
        return new Opening(
                new OpeningId("%s-%s-%d%02d".formatted(facade.site(), facade.facade(), level, place)),
                facade,
                level,
                width,
                height,
                habit.frame(),
                habit.method(),
                habit.approach(),
                habit.secondLayer(),
                delivered,
                dice.chance(TESTED),
                dice.chance(0.05) ? dice.whole(1, 3) : 0,
                installed ? StepList.of(habit.method(), habit.approach()).last() : 0,
                installed ? lastWeek(dice) : null);
    }

    private static Instant lastWeek(Dice dice) {
        return Season.MONDAY
                .minusDays(dice.whole(3, 4))
                .atTime(dice.whole(8, 14), 0)
                .atZone(Season.ZONE)
                .toInstant();
    }
}
