package drylap.windowschedule;

import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.sites.Opening;
import drylap.windowschedule.OpeningOutcome.Difference;
import drylap.windowschedule.OpeningOutcome.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What a schedule changes of an opening that is there: its place, size, frame and method, as far as the row says them. Where work has begun nothing
 * changes unless a person agrees, and the method never: the lines of its log belong to the method under which they were marked.
 */
record Differences(Set<OpeningId> begun, Set<OpeningId> agreed) {
    OpeningOutcome of(Opening now, ReadRow row, Set<Field> stoodIn) {
        boolean started = begun.contains(now.id());
        boolean held = started && !agreed.contains(now.id());
        FacadeId facade = stoodIn.contains(Field.ELEVATION) ? now.facade() : row.facade();
        int level = stoodIn.contains(Field.LEVEL) ? now.level() : row.level();
        Frame frame = stoodIn.contains(Field.MATERIAL) ? now.frame() : row.frame();
        Method method = stoodIn.contains(Field.METHOD) ? now.method() : row.method();
        List<Difference> all = new ArrayList<>();
        add(all, ScheduleSaid.FACADE, now.facade().facade(), facade.facade(), held);
        add(all, ScheduleSaid.LEVEL, String.valueOf(now.level()), String.valueOf(level), held);
        add(all, ScheduleSaid.WIDTH, now.widthMm() + " mm", row.widthMm() + " mm", held);
        add(all, ScheduleSaid.HEIGHT, now.heightMm() + " mm", row.heightMm() + " mm", held);
        add(all, ScheduleSaid.FRAME, now.frame().code(), frame.code(), held);
        add(all, ScheduleSaid.METHOD, now.method().code(), method.code(), started);
        if (all.isEmpty()) return new OpeningOutcome(Kind.SAME, now, now, all, row.note());
        if (all.stream().allMatch(Difference::held)) return new OpeningOutcome(Kind.HELD, now, now, all, row.note());
        Opening becomes =
                now.designed(facade, level, row.widthMm(), row.heightMm(), frame, started ? now.method() : method);
        return new OpeningOutcome(Kind.CHANGED, now, becomes, all, row.note());
    }

    private static void add(List<Difference> all, ScheduleSaid what, String was, String said, boolean held) {
        if (!was.equals(said)) all.add(new Difference(what.with(), was, said, held));
    }
}
