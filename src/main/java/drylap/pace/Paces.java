package drylap.pace;

import drylap.kernel.FolderId;
import drylap.pace.PaceSheet.OfMethod;
import drylap.planning.ChangedLabour;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.LabourAnswer;
import drylap.planning.LabourAnswer.Kind;
import drylap.planning.LabourRequest;
import drylap.planning.LabourResult;
import drylap.planning.LabourTable;
import drylap.progress.WholeLog;
import drylap.security.Person;
import drylap.sites.Opening;
import drylap.speech.Saying;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.stereotype.Service;

/** Compares install minutes of the log with the labour table; what it suggests holds only once a scheduler accepts it. */
@Service
public final class Paces {
    /** What is longer ago was another season's work. */
    private static final int LOOKS_BACK_DAYS = 90;

    private final JobFolders folders;
    private final WholeLog log;
    private final ChangedLabour labour;
    private final Clock clock;

    Paces(JobFolders folders, WholeLog log, ChangedLabour labour, Clock clock) {
        this.folders = folders;
        this.log = log;
        this.labour = labour;
        this.clock = clock;
    }

    /** As far as the log of the person's sites tells. */
    public PaceSheet of(Person who, FolderId folder) {
        var newest = labour.newest(who, folder);
        var inForce = labour.inForce(who, folder);
        JobFolder imported = folders.load(folder);
        List<Opening> openings = imported.openings().stream()
                .filter(opening -> who.reach().covers(opening.facade().site()))
                .toList();
        var times =
                InstallTimes.of(openings, log.of(who, folder), imported.crews(), imported.shifts(), imported.labour());
        LocalDate since = clock.instant().atZone(ZoneOffset.UTC).toLocalDate().minusDays(LOOKS_BACK_DAYS);
        var recent = times.timed().stream()
                .filter(one -> !one.date().isBefore(since))
                .toList();
        var now = standing(imported.labour(), inForce);
        return new PaceComparison(openings, recent, now, inForce, newest).sheet(times.leftOut());
    }

    /**
     * Puts what is suggested in force.
     *
     * @param seen what the person was shown; where the log says something else by now, nothing is changed
     */
    public LabourResult accept(Person who, FolderId folder, OfMethod seen) {
        return answer(who, folder, seen, Kind.ACCEPTED);
    }

    /** Leaves the minutes as they are; as much is not suggested again. */
    public LabourResult decline(Person who, FolderId folder, OfMethod seen) {
        return answer(who, folder, seen, Kind.DECLINED);
    }

    /** Goes back to the imported minutes of a method. */
    public LabourResult withdraw(Person who, FolderId folder, LabourAnswer inForce, long seenId) {
        return labour.answer(
                who,
                folder,
                new LabourRequest(inForce.method(), Kind.WITHDRAWN, inForce.factor(), inForce.openings(), seenId));
    }

    private LabourResult answer(Person who, FolderId folder, OfMethod seen, Kind kind) {
        BigDecimal now = of(who, folder).of(seen.method()).map(OfMethod::factor).orElse(BigDecimal.ONE);
        if (now.compareTo(seen.factor()) != 0)
            return new LabourResult.Refused(Saying.of(
                    "the log of method {0} has grown since you looked: it says {1} by now, not {2}; look again",
                    seen.method(), now.toPlainString(), seen.factor().toPlainString()));
        return labour.answer(
                who,
                folder,
                new LabourRequest(
                        seen.method(), kind, seen.factor(), seen.lately().openings(), seen.seenId()));
    }

    private static LabourTable standing(LabourTable imported, List<LabourAnswer> inForce) {
        LabourTable table = imported;
        for (var answer : inForce) table = table.withInstall(answer.method(), answer.factor());
        return table;
    }

    static BigDecimal clamped(BigDecimal factor) {
        return factor.max(LabourRequest.LEAST).min(LabourRequest.MOST);
    }
}
