package drylap.pace;

import drylap.assembly.Method;
import drylap.planning.LabourAnswer;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the log says about install minutes, for the eyes of a scheduler.
 *
 * @param leftOut complete installs that the log does not time, by reason
 */
public record PaceSheet(List<OfMethod> methods, List<OfCell> cells, Map<Doubt, Integer> leftOut) {
    public PaceSheet {
        methods = List.copyOf(methods);
        cells = List.copyOf(cells);
        leftOut = Map.copyOf(leftOut);
    }

    /** One crew's installs of a method and size. */
    public record OfCell(Cell cell, Lately lately) {}

    /**
     * A method over all crews, in the shares in which they were observed.
     *
     * @param factor of the imported minutes that would make them what is observed
     * @param suggested enough openings say so clearly, and nobody has declined as much
     * @param inForce what was accepted before
     * @param newest the newest answer of any kind
     */
    public record OfMethod(
            Method method,
            BigDecimal factor,
            Lately lately,
            boolean suggested,
            Optional<LabourAnswer> inForce,
            Optional<LabourAnswer> newest) {
        /** What an answer says that it has seen. */
        public long seenId() {
            return newest.map(LabourAnswer::id).orElse(0L);
        }
    }

    public Optional<OfMethod> of(Method method) {
        return methods.stream().filter(one -> one.method() == method).findFirst();
    }
}
