package drylap.progress;

import drylap.kernel.FolderId;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;

/** Told by whoever keeps the contractor's numbers. */
public interface RulesOfSite {
    Rules of(FolderId folder, SiteId site);

    /** Of all its sites at once, for whoever goes through more than one. */
    RuleBook of(FolderId folder);
}
