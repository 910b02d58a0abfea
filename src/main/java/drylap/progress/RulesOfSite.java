package drylap.progress;

import drylap.kernel.FolderId;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;

/** Told by whoever keeps the contractor's numbers. */
public interface RulesOfSite {
    Rules of(FolderId folder, SiteId site);
}
