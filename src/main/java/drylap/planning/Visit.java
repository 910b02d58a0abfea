package drylap.planning;

import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import java.time.Instant;
import java.time.LocalDate;

/**
 * One task at one opening, on a crew's sheet.
 *
 * @param date the date of the shift that it lies in
 * @param sequence its place in the crew's day, from 1
 */
public record Visit(
        CrewId crew,
        LocalDate date,
        int sequence,
        FacadeId facade,
        int level,
        OpeningId opening,
        Task task,
        Instant start,
        Instant end) {}
