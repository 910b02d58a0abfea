package drylap.pace;

import drylap.assembly.Method;
import drylap.kernel.OpeningId;
import drylap.pace.PaceModel.LogFactor;
import drylap.pace.PaceSheet.OfCell;
import drylap.pace.PaceSheet.OfMethod;
import drylap.planning.LabourAnswer;
import drylap.planning.LabourTable;
import drylap.sites.Opening;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Lays timed installs beside the labour table in force. */
final class PaceComparison {
    /** Fewer openings suggest nothing, however clear they look. */
    static final int LEAST_OPENINGS = 5;

    private static final double OF_95_PERCENT = 1.959964;
    private static final int PLACES = 3;

    private final Map<OpeningId, Opening> openings;
    private final List<TimedInstall> timed;
    private final LabourTable now;
    private final List<LabourAnswer> inForce;
    private final List<LabourAnswer> newest;
    private final PaceModel model;

    PaceComparison(
            List<Opening> openings,
            List<TimedInstall> timed,
            LabourTable now,
            List<LabourAnswer> inForce,
            List<LabourAnswer> newest) {
        this.openings = openings.stream().collect(Collectors.toMap(Opening::id, opening -> opening));
        this.timed = timed;
        this.now = now;
        this.inForce = inForce;
        this.newest = newest;
        this.model = PaceModel.learnt(timed);
    }

    PaceSheet sheet(Map<Doubt, Integer> leftOut) {
        var cells = timed.stream().collect(Collectors.groupingBy(TimedInstall::cell)).entrySet().stream()
                .map(cell -> new OfCell(cell.getKey(), lately(cell.getValue(), model.of(cell.getKey()))))
                .sorted(Comparator.comparing((OfCell one) -> one.cell().crew().value())
                        .thenComparing(one -> one.cell().method())
                        .thenComparing(one -> one.cell().size()))
                .toList();
        var methods = Arrays.stream(Method.values())
                .flatMap(method -> method(method).stream())
                .toList();
        return new PaceSheet(methods, cells, leftOut);
    }

    private Optional<OfMethod> method(Method method) {
        var own = timed.stream().filter(one -> one.cell().method() == method).toList();
        var accepted = of(inForce, method);
        if (own.isEmpty() && accepted.isEmpty()) return Optional.empty();
        if (own.isEmpty()) {
            var nothing = new Lately(0, 0, 0, 0);
            return Optional.of(
                    new OfMethod(method, accepted.get().factor(), nothing, false, accepted, of(newest, method)));
        }
        Map<Cell, Double> shares = own.stream()
                .collect(Collectors.groupingBy(TimedInstall::cell, Collectors.summingDouble(_ -> 1.0 / own.size())));
        LogFactor log = model.of(shares);
        BigDecimal factor = Paces.clamped(BigDecimal.valueOf(log.factor()).setScale(PLACES, RoundingMode.HALF_UP));
        Lately lately = lately(own, log);
        boolean suggested = own.size() >= LEAST_OPENINGS && lately.differs() && !declined(method, log);
        return Optional.of(new OfMethod(method, factor, lately, suggested, accepted, of(newest, method)));
    }

    /** What was declined is not asked again before it has moved out of its range. */
    private boolean declined(Method method, LogFactor log) {
        return of(newest, method)
                .filter(answer -> answer.kind() == LabourAnswer.Kind.DECLINED)
                .filter(answer -> Math.abs(answer.factor().doubleValue() - log.factor())
                        <= OF_95_PERCENT * log.error() * log.factor())
                .isPresent();
    }

    private static Optional<LabourAnswer> of(List<LabourAnswer> answers, Method method) {
        return answers.stream().filter(answer -> answer.method() == method).findFirst();
    }

    private Lately lately(List<TimedInstall> own, LogFactor log) {
        double minutes = mean(own, TimedInstall::planned) * log.factor();
        double planned = mean(own, one -> now.installMinutes(Objects.requireNonNull(openings.get(one.opening()))));
        return new Lately(planned, minutes, OF_95_PERCENT * log.error() * minutes, own.size());
    }

    private static double mean(List<TimedInstall> own, ToDoubleFunction<TimedInstall> number) {
        return own.stream().mapToDouble(number).average().orElse(0);
    }
}
