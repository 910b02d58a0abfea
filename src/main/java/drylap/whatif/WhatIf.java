package drylap.whatif;

import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** Plans scenarios beside the folder as it is, each with the same budget and seed; neither folder nor plans are touched. */
public final class WhatIf {
    private WhatIf() {}

    /**
     * The outcomes in order, the folder as it is first.
     *
     * @throws IllegalArgumentException where a scenario cannot be made of this folder; nothing is planned then
     */
    public static List<Outcome> compare(
            JobFolder folder, List<Scenario> scenarios, PlanRequest request, BooleanSupplier stop) {
        record Named(String name, JobFolder folder) {}
        List<Named> all = Stream.concat(Stream.of(new Scenario(Scenario.AS_IT_IS, List.of())), scenarios.stream())
                .map(one -> new Named(one.name(), one.applyTo(folder)))
                .toList();
        int atOnce = Math.min(all.size(), Runtime.getRuntime().availableProcessors());
        try (ExecutorService threads = Executors.newFixedThreadPool(atOnce)) {
            List<Future<Outcome>> planned = new ArrayList<>();
            for (Named one : all)
                planned.add(
                        threads.submit(() -> new Outcome(one.name(), one.folder(), plan(one.folder(), request, stop))));
            return planned.stream().map(WhatIf::got).toList();
        }
    }

    private static Plan plan(JobFolder folder, PlanRequest request, BooleanSupplier stop) {
        return Planner.standard().plan(folder, request, _ -> {}, stop);
    }

    private static Outcome got(Future<Outcome> planned) {
        try {
            return planned.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("planning was interrupted", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
    }
}
