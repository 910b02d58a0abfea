package drylap.progress;

import static drylap.persistence.jooq.Tables.CREW;

import drylap.assembly.WorkLine;
import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.kernel.Trade;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** Whose line it is to tick: each trade ticks its own. */
@Service
final class MarkRights {
    private final DSLContext db;

    MarkRights(DSLContext db) {
        this.db = db;
    }

    void demand(Person who, FolderId folder, SiteId site, WorkLine line) {
        switch (line.trade()) {
            case WINDOW -> who.demand(Operation.MARK_INSTALL, site);
            case TESTER -> who.demand(Operation.RECORD_WATER_TEST, site);
            case WRAP, SIDING -> {
                who.demand(Operation.MARK_FOLLOW_ON, site);
                if (!worksIn(who, folder, line.trade()))
                    throw new NotAllowed(
                            who,
                            Operation.MARK_FOLLOW_ON,
                            "for the %s trade".formatted(line.trade().code()));
            }
        }
    }

    boolean allow(Person who, FolderId folder, SiteId site, WorkLine line) {
        return switch (line.trade()) {
            case WINDOW -> who.may(Operation.MARK_INSTALL, site);
            case TESTER -> who.may(Operation.RECORD_WATER_TEST, site);
            case WRAP, SIDING -> who.may(Operation.MARK_FOLLOW_ON, site) && worksIn(who, folder, line.trade());
        };
    }

    private boolean worksIn(Person who, FolderId folder, Trade trade) {
        var crew = who.crew();
        return crew != null
                && db.fetchExists(
                        CREW,
                        CREW.FOLDER_ID.eq(folder.value()),
                        CREW.CREW_.eq(crew.value()),
                        CREW.TRADE.eq(trade.code()));
    }
}
