package drylap.intake;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.intake.csv.Header;
import drylap.intake.csv.Lines;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.CrewId;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** The rows of {@code shifts.csv}. */
final class ShiftRows {
    private record CrewDate(CrewId crew, LocalDate date) {}

    private ShiftRows() {}

    static List<Shift> read(Table table, Known known) {
        List<Shift> shifts = new ArrayList<>();
        Header home = ContractFiles.SHIFTS;
        Ids<CrewDate> taken = new Ids<>(Ids.Kind.SHIFT, home);
        table.each(row -> {
            Shift shift = shift(row, known);
            if (row.sound()) check(row, shift);
            if (row.sound()) taken.claim(row, "date", new CrewDate(shift.crew(), shift.date()));
            if (row.sound()) shifts.add(shift);
        });
        return shifts;
    }

    private static Shift shift(Row row, Known known) {
        CrewId id = new CrewId(row.text("crew"));
        known.crews.require(row, "crew", id);
        Crew crew = known.crewById.get(id);
        ZoneId zone = crew == null ? ZoneOffset.UTC : crew.zone();
        return new Shift(
                id,
                row.date("date"),
                row.clock("start"),
                row.clock("end"),
                row.optional("break_start", row::clock),
                row.optional("break_end", row::clock),
                row.optional("overtime_until", row::clock),
                zone);
    }

    private static void check(Row row, Shift shift) {
        if (!shift.end().isAfter(shift.start()) || !shift.endsAt().isAfter(shift.startsAt()))
            row.wrong("end", FolderWords.NOT_AFTER_START.with(), FolderWords.AFTER.with(shift.start()));
        else if (shift.overtimeUntil() != null && shift.overtimeUntil().isBefore(shift.end()))
            row.wrong("overtime_until", FolderWords.BEFORE_END.with(), FolderWords.FROM_ON.with(shift.end()));
        else checkBreak(row, shift);
    }

    private static void checkBreak(Row row, Shift shift) {
        LocalTime from = shift.breakStart();
        LocalTime until = shift.breakEnd();
        if (from == null && until == null) return;
        String within = FolderWords.BREAK_WITHIN.with(shift.start(), shift.end());
        if (from == null) row.wrong("break_start", FolderWords.NO_BREAK_START.with(), within);
        else if (until == null) row.wrong("break_end", FolderWords.NO_BREAK_END.with(), within);
        else if (!until.isAfter(from)) row.wrong("break_end", FolderWords.BREAK_ENDS_FIRST.with(), within);
        else if (from.isBefore(shift.start())) row.wrong("break_start", FolderWords.BEFORE_SHIFT.with(), within);
        else if (until.isAfter(shift.end())) row.wrong("break_end", FolderWords.AFTER_SHIFT.with(), within);
    }

    static Lines write(List<Shift> shifts) {
        Lines lines = new Lines(ContractFiles.SHIFTS);
        for (Shift shift : shifts)
            lines.add(
                    shift.crew(),
                    shift.date(),
                    shift.start(),
                    shift.end(),
                    shift.breakStart(),
                    shift.breakEnd(),
                    shift.overtimeUntil());
        return lines;
    }
}
