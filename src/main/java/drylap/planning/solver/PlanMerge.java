package drylap.planning.solver;

import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.planning.CoverNow;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.OpenWindow;
import drylap.planning.Plan;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/** Puts the plans of a job's regions together: crews, sites and costs of one have nothing to do with those of another. */
final class PlanMerge {
    private PlanMerge() {}

    static Plan of(JobFolder folder, List<Plan> plans) {
        if (plans.size() == 1) return plans.getFirst();
        Map<OpeningId, Integer> openings = numbered(folder.openings(), opening -> opening.id());
        Map<FacadeId, Integer> facades = numbered(folder.facades(), facade -> facade.id());
        return new Plan(
                plans.getFirst().start(),
                plans.getFirst().horizonEnd(),
                all(plans, Plan::visits, Comparator.comparing(Visit::crew).thenComparing(Visit::start)),
                all(plans, Plan::unplanned, Comparator.comparing((UnplannedTask task) -> openings.get(task.opening()))),
                all(
                        plans,
                        Plan::coverNow,
                        Comparator.comparing(CoverNow::nextRain).thenComparing(CoverNow::opening)),
                all(plans, Plan::openHours, Comparator.comparing((OpenWindow window) -> facades.get(window.facade()))),
                ledger(plans));
    }

    private static <T, K> Map<K, Integer> numbered(List<T> all, Function<T, K> key) {
        Map<K, Integer> numbers = new HashMap<>();
        for (T one : all) numbers.put(key.apply(one), numbers.size());
        return numbers;
    }

    /** Sorted and otherwise in the order of the regions. */
    private static <T> List<T> all(List<Plan> plans, Function<Plan, List<T>> of, Comparator<? super T> order) {
        return plans.stream()
                .flatMap(plan -> of.apply(plan).stream())
                .sorted(order)
                .toList();
    }

    private static Ledger ledger(List<Plan> plans) {
        List<Ledger> ledgers = plans.stream().map(Plan::ledger).toList();
        return new Ledger(
                Arrays.stream(LedgerTerm.values())
                        .map(term -> line(ledgers, term))
                        .toList(),
                sum(ledgers, Ledger::hard),
                sum(ledgers, Ledger::medium),
                sum(ledgers, Ledger::soft));
    }

    private static Ledger.Line line(List<Ledger> ledgers, LedgerTerm term) {
        List<Ledger.Line> lines = ledgers.stream()
                .flatMap(ledger -> ledger.lines().stream())
                .filter(line -> line.term() == term)
                .toList();
        long weight = lines.getFirst().weight();
        long amount = lines.stream().mapToLong(Ledger.Line::amount).sum();
        return new Ledger.Line(term, amount, weight, amount * weight);
    }

    private static long sum(List<Ledger> ledgers, ToLongFunction<Ledger> number) {
        return ledgers.stream().mapToLong(number).sum();
    }
}
