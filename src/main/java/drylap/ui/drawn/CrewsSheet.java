package drylap.ui.drawn;

import drylap.crews.Absence;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.speech.Saying;
import drylap.speech.Speech;
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
    public static CrewsSheet of(Speech say, FolderShown shown, List<Absence> absences) {
        return new CrewsSheet(shown.folder().crews().stream()
                .map(crew -> crew(say, shown, crew, absences))
                .toList());
    }

    private static OneCrew crew(Speech say, FolderShown shown, Crew crew, List<Absence> absences) {
        var shifts = shown.folder().shifts().stream()
                .filter(shift -> shift.crew().equals(crew.id()))
                .toList();
        var own = absences.stream().filter(one -> one.crew().equals(crew.id())).toList();
        var dates = new TreeSet<>(
                Stream.concat(shifts.stream().map(Shift::date), own.stream().map(Absence::date))
                        .toList());
        return new OneCrew(
                crew.id(),
                CrewWords.of(say, crew),
                dates.stream().map(date -> day(say, date, shifts, own)).toList());
    }

    private static Day day(Speech say, LocalDate date, List<Shift> shifts, List<Absence> absences) {
        Optional<Shift> shift =
                shifts.stream().filter(one -> one.date().equals(date)).findFirst();
        var away = absences.stream()
                .filter(one -> one.date().equals(date))
                .map(one -> new Away(one.id(), say.it("{0}: {1} ({2})", one.saying(), one.reason(), one.by())))
                .toList();
        return new Day(
                date,
                say.day(date),
                shift.map(one -> say.it(hours(one))).orElseGet(() -> say.it("does not come")),
                shift.isPresent(),
                away);
    }

    private static Saying hours(Shift shift) {
        var hours = Saying.of("{0} to {1}", shift.start(), shift.end());
        if (shift.breakStart() != null && shift.breakEnd() != null)
            hours = Saying.of("{0}, break {1} to {2}", hours, shift.breakStart(), shift.breakEnd());
        return shift.overtimeUntil() == null ? hours : Saying.of("{0}, overtime to {1}", hours, shift.overtimeUntil());
    }
}
