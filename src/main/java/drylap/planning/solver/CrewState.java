package drylap.planning.solver;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** How far a crew's list is decoded: its day, the end of its last task that day, and which task that was. */
final class CrewState {
    final CrewCalendar crew;
    List<Unit> units = List.of();
    int position;
    int day;
    int clock;

    @Nullable
    WorkTask before;

    CrewState(CrewCalendar crew) {
        this.crew = crew;
    }

    void restart() {
        position = 0;
        day = 0;
        clock = 0;
        before = null;
    }

    boolean finished() {
        return position >= units.size();
    }
}
