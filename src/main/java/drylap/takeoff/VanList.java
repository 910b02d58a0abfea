package drylap.takeoff;

import drylap.kernel.CrewId;
import java.time.LocalDate;

/** What a window crew loads for a day. */
public record VanList(CrewId crew, LocalDate date, Supplies supplies) {}
