package drylap.intake.generate;

import drylap.kernel.FacadeId;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Facades and their openings: courses of 4 to 12, one to four levels a facade, as many facades as a site needs. */
record Walls(List<Facade> facades, List<Opening> openings) {
    static final int SHORTEST_COURSE = 4;
    static final int LONGEST_COURSE = 12;
    private static final int EARLIEST_DUE_DAY = 12;

    static Walls of(List<Site> sites, int openings, Dice dice) {
        Walls walls = new Walls(new ArrayList<>(), new ArrayList<>());
        for (int i = 0; i < sites.size(); i++) {
            int share = openings / sites.size() + (i < openings % sites.size() ? 1 : 0);
            walls.build(sites.get(i), courses(share, dice), dice);
        }
        return walls;
    }

    /** Splits a site's openings so that no rest is shorter than a course. */
    static List<Integer> courses(int openings, Dice dice) {
        List<Integer> courses = new ArrayList<>();
        int left = openings;
        while (left > LONGEST_COURSE) {
            int most = Math.min(LONGEST_COURSE, left - SHORTEST_COURSE);
            int length = dice.whole(SHORTEST_COURSE, most);
            courses.add(length);
            left -= length;
        }
        courses.add(left);
        return courses;
    }

    private void build(Site site, List<Integer> courses, Dice dice) {
        Habit habit = Habit.ofSite(dice);
        double azimuth = Dice.rounded(dice.between(0, 89), 0);
        int next = 0;
        for (int wall = 1; next < courses.size(); wall++) {
            FacadeId id = new FacadeId(site.id(), "F" + wall);
            facades.add(new Facade(id, (azimuth + 90 * (wall - 1)) % 360, due(dice)));
            int levels = Math.min(dice.whole(1, 4), courses.size() - next);
            for (int level = 1; level <= levels; level++)
                openings.addAll(new CourseOfOpenings(id, level, courses.get(next++)).openings(habit, dice));
        }
    }

    private static @Nullable LocalDate due(Dice dice) {
        return dice.chance(0.3) ? null : Season.MONDAY.plusDays(dice.whole(EARLIEST_DUE_DAY, Season.DAYS - 1));
    }
}
