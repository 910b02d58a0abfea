package drylap.risk;

import drylap.climate.MonthlyNormals;
import drylap.kernel.Rules;
import drylap.kernel.Sha256;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What odds were reckoned from: of each part of the job a digest, the same on every node. What of a stored folder never changes,
 * such as its walls, is not in it, nor is the plan, whose own the odds are.
 */
record Basis(Map<OddsPart, String> parts) {
    private static final int LENGTH = 20;

    static Basis of(JobFolder folder, List<MonthlyNormals> normals, Instant from) {
        Map<OddsPart, String> parts = new EnumMap<>(OddsPart.class);
        parts.put(
                OddsPart.LOG,
                digest(folder.openings().stream().map(Basis::standing).toList()));
        parts.put(
                OddsPart.FORECASTS,
                digest(folder.forecasts().stream()
                        .map(one -> one.site() + " " + one.hours())
                        .toList()));
        parts.put(OddsPart.NORMALS, digest(normals));
        parts.put(OddsPart.DURATIONS, digest(folder.labour().rows()));
        parts.put(OddsPart.RULES, digest(rules(folder)));
        parts.put(OddsPart.SHIFTS, digest(folder.shifts()));
        var zone = folder.sites().getFirst().zone();
        parts.put(OddsPart.DAY, from.atZone(zone).toLocalDate().toString());
        return new Basis(parts);
    }

    /** Sets and maps have no order of their own, so that each node would write them otherwise. */
    private static String standing(Opening one) {
        return "%s %d %s".formatted(one.id(), one.done(), new TreeSet<>(one.finished()));
    }

    private static List<String> rules(JobFolder folder) {
        Map<String, String> all = new TreeMap<>();
        all.put("", inOrder(folder.rules().everywhere()));
        folder.rules().ofSites().forEach((site, rules) -> all.put(site.value(), inOrder(rules)));
        return List.of(all.toString());
    }

    private static String inOrder(Rules rules) {
        return new TreeMap<>(rules.own()).toString();
    }

    private static String digest(Collection<?> lines) {
        MessageDigest digest = Sha256.begun();
        for (Object line : lines) digest.update((line + "\n").getBytes(StandardCharsets.UTF_8));
        return Sha256.hex(digest).substring(0, LENGTH);
    }

    /** The parts that are otherwise now. */
    Set<OddsPart> changedTo(Basis now) {
        Set<OddsPart> changed = EnumSet.noneOf(OddsPart.class);
        for (OddsPart part : OddsPart.values())
            if (!java.util.Objects.equals(parts.get(part), now.parts.get(part))) changed.add(part);
        return changed;
    }
}
