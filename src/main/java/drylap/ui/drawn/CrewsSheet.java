package drylap.ui.drawn;

import drylap.crews.Absence;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.CrewId;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Which crews come on which days, and who said that they do not. */
public record CrewsSheet(List<OneCrew> crews) {
    /** A crew with its days in order. */
    public record OneCrew(CrewId crew, String trade, List<Day> days) {}

    /**
     * A day on which a crew has a shift, or had one.
     *
     * @param hours in words; what is left of the shift where the crew is away for a part
     */
    public record Day(LocalDate date, String when, String hours, boolean works, List<Away> away) {}

    public record Away(long id, String words) {}

    /** @param absences those in force */
    public static CrewsSheet of(FolderShown shown, List<Absence> absences) {
        return new CrewsSheet(shown.folder().crews().stream()
                .map(crew -> crew(shown, crew, absences))
                .toList());
    }

    private static OneCrew crew(FolderShown shown, Crew crew, List<Absence> absences) {
        var shifts = shown.folder().shifts().stream()
                .filter(shift -> shift.crew().equals(crew.id()))
                .toList();
        var own = absences.stream().filter(one -> one.crew().equals(crew.id())).toList();
        var dates = new TreeSet<>(
                Stream.concat(shifts.stream().map(Shift::date), own.stream().map(Absence::date))
                        .toList());
        return new OneCrew(
                crew.id(),
                Words.crewOf(crew.trade()),
                dates.stream().map(date -> day(date, shifts, own)).toList());
    }

    private static Day day(LocalDate date, List<Shift> shifts, List<Absence> absences) {
        Optional<Shift> shift =
                shifts.stream().filter(one -> one.date().equals(date)).findFirst();
        var away = absences.stream()
                .filter(one -> one.date().equals(date))
                .map(one -> new Away(one.id(), "%s: %s (%s)".formatted(one.words(), one.reason(), one.by())))
                .toList();
        return new Day(
                date,
                Words.weekday(date) + " " + Words.date(date),
                shift.map(CrewsSheet::hours).orElse("does not come"),
                shift.isPresent(),
                away);
    }

    private static String hours(Shift shift) {
        String hours = "%s to %s".formatted(shift.start(), shift.end());
        if (shift.breakStart() != null) hours += ", break %s to %s".formatted(shift.breakStart(), shift.breakEnd());
        return shift.overtimeUntil() == null ? hours : hours + ", overtime to %s".formatted(shift.overtimeUntil());
    }
}
