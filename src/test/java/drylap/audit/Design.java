package drylap.audit;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.sites.Opening;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** An opening in the making: ordinary until told otherwise. */
final class Design {
    private final Opening base;
    private int widthMm;
    private int heightMm;
    private SecondLayer secondLayer;
    private LocalDate deliveredOn;
    private boolean waterTest;
    private int priority;
    private int done;
    private @Nullable Instant doneAt;

    private Design(Opening base) {
        this.base = base;
        widthMm = base.widthMm();
        heightMm = base.heightMm();
        secondLayer = base.secondLayer();
        deliveredOn = base.deliveredOn();
        waterTest = base.waterTest();
        priority = base.priority();
        done = base.done();
        doneAt = base.doneAt();
    }

    static Design like(Opening opening) {
        return new Design(opening);
    }

    /** 1.0 by 1.5 m of vinyl, delivered on Monday 2026-04-13, nothing done. */
    static Design of(String id, FacadeId facade, int level, Method method, Approach approach) {
        return new Design(new Opening(
                new OpeningId(id),
                facade,
                level,
                1000,
                1500,
                Frame.VINYL,
                method,
                approach,
                SecondLayer.NONE,
                LocalDate.of(2026, 4, 13),
                false,
                0,
                0,
                null));
    }

    Design tested() {
        waterTest = true;
        return this;
    }

    Design begun(int steps) {
        return done(steps, TwoSites.at("12 15:00"));
    }

    Design done(int steps, @Nullable Instant at) {
        done = steps;
        doneAt = at;
        return this;
    }

    Design sized(int width, int height) {
        widthMm = width;
        heightMm = height;
        return this;
    }

    Design tucked() {
        secondLayer = SecondLayer.TUCK;
        return this;
    }

    Design delivered(String date) {
        deliveredOn = LocalDate.parse(date);
        return this;
    }

    Design priority(int steps) {
        priority = steps;
        return this;
    }

    Opening opening() {
        return new Opening(
                base.id(),
                base.facade(),
                base.level(),
                widthMm,
                heightMm,
                base.frame(),
                base.method(),
                base.approach(),
                secondLayer,
                deliveredOn,
                waterTest,
                priority,
                done,
                doneAt);
    }
}
