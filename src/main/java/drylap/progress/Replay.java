package drylap.progress;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import drylap.assembly.AsBuilt;
import drylap.assembly.RainCheck;
import drylap.assembly.WorkLine;
import drylap.assembly.WorkList;
import drylap.kernel.FolderId;
import drylap.kernel.Rules;
import drylap.sites.Opening;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Turns an opening and its entries into its state. */
final class Replay {
    private record Standing(AsBuilt built, RainCheck check, List<WorkLine> next) {}

    private record Key(WorkList list, Set<String> done) {}

    /** Many openings of many jobs stand alike, and how they stand follows from the key alone: each standing is judged once. */
    static final class Judge {
        private static final int MOST = 20_000;
        private final Cache<Key, Standing> judged =
                Caffeine.newBuilder().maximumSize(MOST).build();

        private Standing of(WorkList list, Set<String> done) {
            return judged.get(new Key(list, done), Replay::judge);
        }
    }

    private final FolderId folder;
    private final Instant now;
    private final Judge judge;

    Replay(FolderId folder, Instant now, Judge judge) {
        this.folder = folder;
        this.now = now;
        this.judge = judge;
    }

    /** @param marks the opening's own, in the order of their ids */
    OpeningState of(Opening opening, List<Mark> marks, Rules rules) {
        var done = done(opening, marks);
        var standing = judge.of(opening.workList(), Set.copyOf(done.keySet()));
        var lines = opening.workList().lines().stream()
                .filter(line -> done.containsKey(line.code()))
                .map(line -> done.getOrDefault(line.code(), new LineDone(line, null, null)))
                .toList();
        return new OpeningState(
                folder,
                opening,
                lines,
                standing.built(),
                standing.check(),
                standing.next(),
                Exposures.of(standing.built(), lines, rules, now),
                marks.isEmpty() ? null : marks.getLast(),
                marks.isEmpty() ? 0 : marks.getLast().id());
    }

    private static Map<String, LineDone> done(Opening opening, List<Mark> marks) {
        Map<String, LineDone> done = new LinkedHashMap<>();
        var list = opening.workList();
        for (String code : list.doneBy(opening.done()))
            list.line(code).ifPresent(line -> done.put(code, new LineDone(line, opening.doneAt(), null)));
        for (Mark mark : marks) {
            if (mark.kind() == MarkKind.UNDONE) done.remove(mark.line());
            else list.line(mark.line()).ifPresent(line -> done.put(mark.line(), new LineDone(line, mark.at(), mark)));
        }
        return done;
    }

    private static Standing judge(Key key) {
        var built = key.list().built(key.done());
        return new Standing(built, RainCheck.of(built), key.list().next(key.done()));
    }
}
