package drylap.persistence;

import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.impl.DSL;

/** Rights by site, as SQL: a row outside someone's reach is never fetched. */
public final class Within {
    private Within() {}

    public static Condition reach(Field<String> site, Reach reach) {
        return reach.everySite()
                ? DSL.trueCondition()
                : site.in(reach.sites().stream().map(SiteId::value).toList());
    }
}
