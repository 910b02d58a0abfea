package drylap.audit;

import drylap.kernel.OpeningId;
import drylap.planning.CoverNow;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.speech.Speech;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Compares the claimed ledger and the claimed list of openings to cover with the audit's own. */
record LedgerChecks(JobBook book, Recount recount, Findings findings) {
    /** A chance within this of a half thousandth may be rounded either way. */
    private static final double NEAR_HALF = 1e-6;

    void ledger(Ledger claimed, Ledger counted) {
        for (Ledger.Line line : counted.lines()) {
            Optional<Ledger.Line> theirs = claimed.lines().stream()
                    .filter(other -> other.term() == line.term())
                    .findFirst();
            if (theirs.isEmpty()) findings.plain(ContractRule.LEDGER_TERM, where(line.term()), "the line is missing");
            else if (!roundedTheOtherWay(theirs.get(), line)) term(theirs.get(), line);
        }
        differ(ContractRule.HARD, "ledger, hard", claimed.hard(), counted.hard());
        differ(ContractRule.MEDIUM, "ledger, medium", claimed.medium(), counted.medium());
        differ(ContractRule.SOFT, "ledger, soft", claimed.soft(), softAsRounded(claimed, counted));
    }

    private static String where(LedgerTerm term) {
        return "ledger, " + term.code();
    }

    private void term(Ledger.Line theirs, Ledger.Line line) {
        differ(ContractRule.LEDGER_TERM, where(line.term()) + " amount", theirs.amount(), line.amount());
        differ(ContractRule.LEDGER_TERM, where(line.term()) + " weight", theirs.weight(), line.weight());
        differ(ContractRule.LEDGER_TERM, where(line.term()) + " cost", theirs.cost(), line.cost());
    }

    private void differ(ContractRule rule, String where, long claimed, long counted) {
        if (claimed != counted)
            findings.plain(rule, where, "the plan says %d, the audit counts %d".formatted(claimed, counted));
    }

    private boolean roundedTheOtherWay(Ledger.Line theirs, Ledger.Line line) {
        return line.term() == LedgerTerm.RAIN_RISK
                && theirs.weight() == line.weight()
                && theirs.cost() == theirs.amount() * theirs.weight()
                && theirs.amount() >= recount.rainRisk(-NEAR_HALF)
                && theirs.amount() <= recount.rainRisk(NEAR_HALF);
    }

    private long softAsRounded(Ledger claimed, Ledger counted) {
        long soft = counted.soft();
        for (Ledger.Line line : counted.lines())
            for (Ledger.Line theirs : claimed.lines())
                if (theirs.term() == line.term() && roundedTheOtherWay(theirs, line))
                    soft += theirs.cost() - line.cost();
        return soft;
    }

    void coverNow(List<CoverNow> claimed, List<CoverNow> found) {
        Map<OpeningId, CoverNow> theirs = new HashMap<>();
        for (CoverNow entry : claimed)
            if (theirs.put(entry.opening(), entry) != null) cover(entry.opening(), "stands twice");
        for (CoverNow own : found) {
            CoverNow other = theirs.remove(own.opening());
            if (other == null)
                cover(
                        own.opening(),
                        "is missing: it stands open, and the next rain is at " + time(own, own.nextRain()));
            else compare(other, own);
        }
        theirs.keySet().forEach(opening -> cover(opening, "need not be covered"));
    }

    private void compare(CoverNow theirs, CoverNow own) {
        if (!sameSince(theirs.openSince(), own.openSince())) cover(own.opening(), "open since is not when it was left");
        if (!minute(theirs.nextRain()).equals(minute(own.nextRain())))
            cover(own.opening(), "the next rain is at " + time(own, own.nextRain()));
        if (theirs.minutesToClose() != own.minutesToClose())
            cover(own.opening(), "it takes %d min to close".formatted(own.minutesToClose()));
    }

    /** Where nobody wrote down when a step was done, the plan's start may stand for it. */
    private boolean sameSince(@Nullable Instant theirs, @Nullable Instant own) {
        if (own != null) return theirs != null && minute(theirs).equals(minute(own));
        return theirs == null || minute(theirs).equals(minute(book.start()));
    }

    private static Instant minute(Instant instant) {
        return instant.truncatedTo(ChronoUnit.MINUTES);
    }

    private String time(CoverNow entry, Instant instant) {
        ZoneId zone = book.site(book.opened(entry.opening()).facade().site()).zone();
        return Findings.time(instant, zone).in(Speech.ENGLISH);
    }

    private void cover(OpeningId opening, String what) {
        findings.plain(ContractRule.COVER_NOW, "cover now, " + opening, what);
    }
}
