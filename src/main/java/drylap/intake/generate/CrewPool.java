package drylap.intake.generate;

import drylap.assembly.Method;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.kernel.Trade;
import drylap.sites.Opening;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Enough crews for all the work in about half of the three weeks, so that rain, cure and shingle order still leave room:
 * at least one of each trade, and window crews of which two in three are trained for everything.
 */
final class CrewPool {
    private static final int OPENINGS_A_WINDOW_CREW = 18;
    private static final int OPENINGS_A_WRAP_CREW = 90;
    private static final int OPENINGS_A_SIDING_CREW = 60;
    private static final int TESTS_A_TESTER = 40;

    private CrewPool() {}

    static List<Crew> sizedFor(List<Opening> openings, Coast coast, Dice dice) {
        int all = openings.size();
        int tests = (int) openings.stream().filter(Opening::waterTest).count();
        List<Crew> crews = new ArrayList<>();
        add(crews, Trade.WINDOW, "W", Math.ceilDiv(all, OPENINGS_A_WINDOW_CREW), coast, dice);
        add(crews, Trade.TESTER, "T", Math.ceilDiv(tests, TESTS_A_TESTER), coast, dice);
        add(crews, Trade.WRAP, "R", Math.ceilDiv(all, OPENINGS_A_WRAP_CREW), coast, dice);
        add(crews, Trade.SIDING, "D", Math.ceilDiv(all, OPENINGS_A_SIDING_CREW), coast, dice);
        return crews;
    }

    /** Spreads the crews of a trade evenly over the districts. */
    private static void add(List<Crew> crews, Trade trade, String letter, int count, Coast coast, Dice dice) {
        for (int i = 0; i < count; i++) {
            int district = (int) ((long) i * coast.districts() / count);
            Set<Method> methods = trade == Trade.WINDOW && i % 3 == 2 ? some(dice) : Set.of();
            String id = "C-%s%0" + Integer.toString(count).length() + "d";
            crews.add(new Crew(
                    new CrewId(id.formatted(letter, i + 1)), trade, methods, coast.near(district, dice), Season.ZONE));
        }
    }

    private static Set<Method> some(Dice dice) {
        return dice.chance(0.5) ? EnumSet.of(Method.A, Method.B) : EnumSet.of(Method.A1, Method.B1);
    }

    static List<Shift> shifts(List<Crew> crews, Dice dice) {
        List<Shift> shifts = new ArrayList<>();
        for (Crew crew : crews) {
            LocalTime start = LocalTime.of(7, dice.chance(0.3) ? 30 : 0);
            boolean overtime = dice.chance(0.4);
            for (int day = 0; day < Season.DAYS; day++) {
                LocalDate date = Season.MONDAY.plusDays(day);
                if (date.getDayOfWeek() != DayOfWeek.SUNDAY) shifts.add(shift(crew, date, start, overtime));
            }
        }
        return shifts;
    }

    private static Shift shift(Crew crew, LocalDate date, LocalTime start, boolean overtime) {
        LocalTime end = start.plusMinutes(510);
        return new Shift(
                crew.id(),
                date,
                start,
                end,
                LocalTime.of(11, 30),
                LocalTime.NOON,
                overtime ? end.plusMinutes(90) : null,
                crew.zone());
    }
}
