package drylap.planning.solver;

import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.variable.PlanningListVariable;

/** A crew's list of units, in the order in which it will do them. */
@NullUnmarked
@PlanningEntity
public class Route {
    static final String UNITS = "units";

    private CrewCalendar crew;

    @PlanningListVariable(valueRangeProviderRefs = "units")
    private List<Unit> units;

    /** For the solver only. */
    public Route() {}

    Route(CrewCalendar crew, List<Unit> units) {
        this.crew = crew;
        this.units = units;
    }

    CrewCalendar crew() {
        return crew;
    }

    public List<Unit> getUnits() {
        return units;
    }

    public void setUnits(List<Unit> units) {
        this.units = units;
    }

    @Override
    public String toString() {
        return crew.crew.id().value();
    }
}
