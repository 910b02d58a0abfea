package drylap.intake;

import drylap.intake.csv.Lines;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.FacadeId;
import drylap.kernel.SiteId;
import drylap.sites.Facade;
import java.util.ArrayList;
import java.util.List;

/** The rows of {@code facades.csv}. */
final class FacadeRows {
    private FacadeRows() {}

    static List<Facade> read(Table table, Known known) {
        List<Facade> facades = new ArrayList<>();
        table.each(row -> {
            Facade facade = new Facade(
                    id(row, known),
                    row.number("azimuth_deg", FolderWords.DEGREES.with(), 0, 360),
                    row.optional("handover_due", row::date));
            known.facades.claim(row, "facade", facade.id());
            if (row.sound()) facades.add(facade);
        });
        return facades;
    }

    /** The facade that a row names by site and facade; the site is checked, the facade is left to the caller. */
    static FacadeId id(Row row, Known known) {
        SiteId site = new SiteId(row.text("site"));
        known.sites.require(row, "site", site);
        return new FacadeId(site, row.text("facade"));
    }

    /** As {@link #id}; a facade of an unknown site is not reported a second time. */
    static FacadeId reference(Row row, Known known) {
        FacadeId facade = id(row, known);
        if (known.sites.known(facade.site())) known.facades.require(row, "facade", facade);
        return facade;
    }

    static Lines write(List<Facade> facades) {
        Lines lines = new Lines(ContractFiles.FACADES);
        for (Facade facade : facades)
            lines.add(
                    facade.id().site(), facade.id().facade(), Lines.number(facade.azimuthDeg()), facade.handoverDue());
        return lines;
    }
}
