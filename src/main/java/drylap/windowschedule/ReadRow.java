package drylap.windowschedule;

import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.kernel.FacadeId;
import drylap.sites.OpeningNote;
import org.jspecify.annotations.Nullable;

/**
 * A row in which nothing is wrong.
 *
 * @param widthMm of the rough opening, as is the height
 * @param xMm where it lies along its wall, if the schedule says so: new openings of a course are put in that order
 */
record ReadRow(
        int number,
        String mark,
        int quantity,
        FacadeId facade,
        int level,
        int widthMm,
        int heightMm,
        Frame frame,
        Method method,
        @Nullable Integer xMm,
        OpeningNote note) {}
