package drylap.whatif;

import drylap.planning.JobFolder;
import drylap.planning.PlanProgress;
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
    /** Told how each plan comes on, on the threads that plan. */
    public interface Watcher {
        /** @param place 0 for the folder as it is, then the scenarios in order */
        void at(int place, PlanProgress progress);
    }

    private WhatIf() {}

    /**
     * The outcomes in order, the folder as it is first.
     *
     * @throws IllegalArgumentException where a scenario cannot be made of this folder; nothing is planned then
     */
    public static List<Outcome> compare(
            JobFolder folder, List<Scenario> scenarios, PlanRequest request, BooleanSupplier stop) {
        return compare(folder, scenarios, request, (_, _) -> {}, stop);
    }

    /** As {@link #compare(JobFolder, List, PlanRequest, BooleanSupplier)}, watched. */
    public static List<Outcome> compare(
            JobFolder folder, List<Scenario> scenarios, PlanRequest request, Watcher watcher, BooleanSupplier stop) {
        record Named(String name, JobFolder folder) {}
        List<Named> all = Stream.concat(Stream.of(new Scenario(Scenario.AS_IT_IS, List.of())), scenarios.stream())
                .map(one -> new Named(one.name(), one.applyTo(folder)))
                .toList();
        int atOnce = Math.min(all.size(), request.processors());
        PlanRequest each = request.on(request.processors() / atOnce);
        try (ExecutorService threads = Executors.newFixedThreadPool(atOnce)) {
            List<Future<Outcome>> planned = new ArrayList<>();
            for (int i = 0; i < all.size(); i++) {
                int place = i;
                Named one = all.get(i);
                planned.add(threads.submit(() -> new Outcome(
                        one.name(),
                        one.folder(),
                        Planner.standard().plan(one.folder(), each, progress -> watcher.at(place, progress), stop))));
            }
            return planned.stream().map(WhatIf::got).toList();
        }
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
