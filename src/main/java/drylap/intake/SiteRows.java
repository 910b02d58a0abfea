package drylap.intake;

import drylap.intake.csv.Lines;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.GeoPoint;
import drylap.kernel.SiteId;
import drylap.sites.Site;
import drylap.sites.StreetAddress;
import drylap.sites.Terrain;
import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The rows of {@code sites.csv}. */
final class SiteRows {
    private static final String DEGREES = FolderWords.DEGREES.with();

    private SiteRows() {}

    static List<Site> read(Table table, Known known) {
        List<Site> sites = new ArrayList<>();
        table.each(row -> {
            Site site = site(row);
            known.sites.claim(row, "site", site.id());
            if (row.sound()) sites.add(site);
        });
        return sites;
    }

    private static Site site(Row row) {
        return new Site(
                new SiteId(row.text("site")),
                row.text("name"),
                place(row),
                row.zone("time_zone"),
                row.blank("terrain") ? Terrain.III : row.coded("terrain", Terrain.class),
                address(row));
    }

    private static StreetAddress address(Row row) {
        Optional<Saying> fault = StreetAddress.fault(row.raw("address"));
        fault.ifPresent(saying -> row.wrong("address", saying.words(), StreetAddress.ACCEPTED.words()));
        return fault.isPresent() ? StreetAddress.NONE : StreetAddress.read(row.raw("address"));
    }

    static GeoPoint place(Row row) {
        return new GeoPoint(row.number("latitude", DEGREES, -90, 90), row.number("longitude", DEGREES, -180, 180));
    }

    static Lines write(List<Site> sites) {
        boolean told = sites.stream().anyMatch(site -> site.address().known());
        Lines lines = new Lines(told ? ContractFiles.SITES : ContractFiles.SITES.without("address"));
        for (Site site : sites) lines.add(cells(site, told));
        return lines;
    }

    private static @Nullable Object[] cells(Site site, boolean told) {
        List<@Nullable Object> cells = new ArrayList<>(List.of(
                site.id(),
                site.name(),
                Lines.number(site.place().latitude()),
                Lines.number(site.place().longitude()),
                site.zone().getId(),
                site.terrain().code()));
        if (told) cells.add(String.join("; ", site.address().lines()));
        return cells.toArray();
    }
}
