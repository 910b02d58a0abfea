package drylap.planning.solver;

import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Stops for constraint tests: an hour of work on level 1 of one wall, on crew 0's Monday, unless told otherwise. */
final class StopFixture {
    static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);
    static final LocalDate TUESDAY = MONDAY.plusDays(1);
    static final int HOUR = 60;
    static final int DAY = 24 * HOUR;

    private final Task task;
    private final String opening;
    private String wall = "north";
    private int level = 1;
    private int below;
    private int priority;
    private boolean barrierFirst = true;
    private int due = TimeAxis.NEVER;
    private int earliest = -TimeAxis.NEVER;
    private int latestEnd = TimeAxis.NEVER;
    private int coverBy = TimeAxis.NEVER;
    private Stop.@Nullable Before before;
    private int crew;
    private LocalDate date = MONDAY;
    private int start;
    private int free;
    private int travel;
    private int setup;
    private boolean last;
    private int wayBack;
    private int breakFrom = TimeAxis.NEVER;
    private int breakUntil = -TimeAxis.NEVER;
    private boolean able = true;
    private boolean open = true;
    private int rain;

    private StopFixture(Task task, String opening) {
        this.task = task;
        this.opening = opening;
    }

    static StopFixture install(String opening) {
        return new StopFixture(Task.INSTALL, opening);
    }

    static StopFixture test(String opening) {
        return new StopFixture(Task.TEST, opening);
    }

    static StopFixture wrap(String opening) {
        return new StopFixture(Task.WRAP, opening);
    }

    static StopFixture clad(String opening) {
        return new StopFixture(Task.CLAD, opening);
    }

    StopFixture wall(String name) {
        wall = name;
        return this;
    }

    StopFixture level(int number) {
        level = number;
        return this;
    }

    StopFixture above(int lower) {
        below = lower;
        return this;
    }

    StopFixture priority(int value) {
        priority = value;
        return this;
    }

    StopFixture barrierAfterwards() {
        barrierFirst = false;
        return this;
    }

    StopFixture due(int minute) {
        due = minute;
        return this;
    }

    StopFixture notBefore(int minute) {
        earliest = minute;
        return this;
    }

    StopFixture endsBy(int minute) {
        latestEnd = minute;
        return this;
    }

    StopFixture coverBy(int minute) {
        coverBy = minute;
        return this;
    }

    StopFixture published(int byCrew, LocalDate on) {
        before = new Stop.Before(byCrew, on, false, 0);
        return this;
    }

    StopFixture pinned(int byCrew, int at) {
        before = new Stop.Before(byCrew, MONDAY, true, at);
        return this;
    }

    StopFixture by(int number) {
        crew = number;
        return this;
    }

    StopFixture on(LocalDate day) {
        date = day;
        return this;
    }

    StopFixture free(int minute) {
        free = minute;
        return this;
    }

    StopFixture road(int minutes) {
        travel = minutes;
        return this;
    }

    StopFixture setup(int minutes) {
        setup = minutes;
        return this;
    }

    StopFixture last(int minutesBack) {
        last = true;
        wayBack = minutesBack;
        return this;
    }

    StopFixture rest(int from, int until) {
        breakFrom = from;
        breakUntil = until;
        return this;
    }

    StopFixture unable() {
        able = false;
        return this;
    }

    StopFixture shut() {
        open = false;
        return this;
    }

    StopFixture rain(int thousandths) {
        rain = thousandths;
        return this;
    }

    /** The stop, started at the minute; the shift ends at 8 h, its limit is 10 h. */
    Stop at(int minute) {
        start = minute;
        Stop.Shift shift = new Stop.Shift(8 * HOUR, 10 * HOUR, breakFrom, breakUntil);
        return new Stop(
                what(), new Stop.When(crew, date, start, free, travel, setup, last, wayBack, shift, able, open, rain));
    }

    Stop unplanned() {
        return new Stop(what(), null);
    }

    private Stop.What what() {
        return new Stop.What(
                new OpeningId(opening),
                task,
                new FacadeId(new SiteId("S"), wall),
                level,
                below,
                HOUR,
                priority,
                barrierFirst,
                due,
                5 * DAY,
                earliest,
                latestEnd,
                coverBy,
                new Problem.Limits(DAY, 60 * DAY, 14 * DAY),
                before);
    }
}
