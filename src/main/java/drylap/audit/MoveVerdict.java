package drylap.audit;

import drylap.audit.PlanBreaks.Broken;
import drylap.kernel.Reach;
import drylap.planning.Ledger;
import drylap.planning.Visit;
import java.util.List;

/**
 * What becomes of a plan when one visit of it is moved by hand. It judges rules of planning and never says that work at
 * height is safe.
 *
 * @param was the visit where the plan has it
 * @param is the visit where it is to go, with the minutes that its task takes by now
 * @param broken hard rules that the plan keeps now and would not keep then, in the audit's order
 * @param mended hard rules that the plan breaks now and would keep then
 * @param before the plan's costs as it stands
 * @param after its costs with the visit moved
 */
public record MoveVerdict(Visit was, Visit is, List<Broken> broken, List<Broken> mended, Ledger before, Ledger after) {
    public MoveVerdict {
        broken = List.copyOf(broken);
        mended = List.copyOf(mended);
    }

    /** Whether the move breaks no rule. */
    public boolean keepsEveryRule() {
        return broken.isEmpty();
    }

    /** Whether the visit would stay where it is. */
    public boolean still() {
        return was.crew().equals(is.crew()) && was.start().equals(is.start());
    }

    /** What someone of this reach may read of it: that a rule breaks at another site, but not where nor by what. */
    public MoveVerdict within(Reach reach, List<Visit> plan) {
        if (reach.everySite()) return this;
        OutOfReach hidden = new OutOfReach(reach, plan, is);
        return new MoveVerdict(was, is, hidden.told(broken), hidden.told(mended), before, after);
    }
}
