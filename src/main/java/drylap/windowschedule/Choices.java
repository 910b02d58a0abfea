package drylap.windowschedule;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.kernel.SiteId;
import java.time.LocalDate;
import java.util.Map;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * What a person says once for a whole import: how the schedule is to be understood, and what stands in where it says nothing. None where it
 * was not chosen; rows that need it are then faulty.
 *
 * @param unit of numbers that have no unit in their cell or title
 * @param letters what a bare A or B means as a method
 * @param levels the level by the name of a storey, where the schedule writes no number
 * @param walls the facade's name by the elevation's, as the schedule writes it, where they differ
 * @param standIns what holds where a row leaves it out, and for all that schedules do not say
 * @param prefix put before each mark to name its openings, since names are unique in the whole job folder; may be empty
 */
public record Choices(
        SiteId site,
        @Nullable LengthUnit unit,
        @Nullable LetterMeaning letters,
        Map<String, String> walls,
        Map<String, Integer> levels,
        StandIns standIns,
        String prefix) {
    public static final int HIGHEST_LEVEL = LevelText.HIGHEST;

    public Choices {
        walls = Map.copyOf(walls);
        levels = Map.copyOf(levels);
    }

    /**
     * @param wall the facade's name
     * @param deliveredOn of new openings, as are approach, second layer, water test and priority: those of others stay
     */
    public record StandIns(
            @Nullable String wall,
            @Nullable Integer level,
            @Nullable Frame frame,
            @Nullable Method method,
            @Nullable Approach approach,
            @Nullable SecondLayer secondLayer,
            @Nullable LocalDate deliveredOn,
            boolean waterTest,
            int priority) {
        public StandIns withWall(@Nullable String now) {
            return new StandIns(now, level, frame, method, approach, secondLayer, deliveredOn, waterTest, priority);
        }

        public StandIns withLevel(@Nullable Integer now) {
            return new StandIns(wall, now, frame, method, approach, secondLayer, deliveredOn, waterTest, priority);
        }

        public StandIns withFrame(@Nullable Frame now) {
            return new StandIns(wall, level, now, method, approach, secondLayer, deliveredOn, waterTest, priority);
        }

        public StandIns withMethod(@Nullable Method now) {
            return new StandIns(wall, level, frame, now, approach, secondLayer, deliveredOn, waterTest, priority);
        }

        public StandIns withApproach(@Nullable Approach now) {
            return new StandIns(wall, level, frame, method, now, secondLayer, deliveredOn, waterTest, priority);
        }

        public StandIns withSecondLayer(@Nullable SecondLayer now) {
            return new StandIns(wall, level, frame, method, approach, now, deliveredOn, waterTest, priority);
        }

        public StandIns withDeliveredOn(@Nullable LocalDate now) {
            return new StandIns(wall, level, frame, method, approach, secondLayer, now, waterTest, priority);
        }

        public StandIns withWaterTest(boolean now) {
            return new StandIns(wall, level, frame, method, approach, secondLayer, deliveredOn, now, priority);
        }

        public StandIns withPriority(int now) {
            return new StandIns(wall, level, frame, method, approach, secondLayer, deliveredOn, waterTest, now);
        }
    }

    /** A level as a person types it; none where it is no number from 1 to {@link #HIGHEST_LEVEL}. */
    public static OptionalInt level(String typed) {
        return LevelText.read(typed);
    }

    public Choices withUnit(@Nullable LengthUnit now) {
        return new Choices(site, now, letters, walls, levels, standIns, prefix);
    }

    public Choices withLetters(@Nullable LetterMeaning now) {
        return new Choices(site, unit, now, walls, levels, standIns, prefix);
    }

    public Choices withWalls(Map<String, String> now) {
        return new Choices(site, unit, letters, now, levels, standIns, prefix);
    }

    public Choices withLevels(Map<String, Integer> now) {
        return new Choices(site, unit, letters, walls, now, standIns, prefix);
    }

    public Choices withStandIns(StandIns now) {
        return new Choices(site, unit, letters, walls, levels, now, prefix);
    }

    public Choices withPrefix(String now) {
        return new Choices(site, unit, letters, walls, levels, standIns, now);
    }
}
