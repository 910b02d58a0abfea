package drylap.intake;

import drylap.crews.TravelTimes;
import drylap.crews.TravelTimes.Leg;
import drylap.intake.csv.Lines;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;

/** The rows of {@code travel.csv}. */
final class TravelRows {
    private static final int LONGEST_MIN = 10_000;

    private TravelRows() {}

    static TravelTimes read(Table table, Known known) {
        Map<Leg, Integer> minutes = new HashMap<>();
        Ids<Leg> legs = new Ids<>(Ids.Kind.LEG, ContractFiles.TRAVEL);
        table.each(row -> {
            Leg leg = new Leg(place(row, "from", known), place(row, "to", known));
            int given = row.whole("minutes", FolderWords.MINUTES.with(), 0, LONGEST_MIN);
            if (given != 0 && leg.from().equals(leg.to())) row.wrong("minutes", FolderWords.NOT_ZERO.with(), "0");
            if (row.sound()) legs.claim(row, "to", leg);
            if (row.sound()) minutes.put(leg, given);
        });
        return new TravelTimes(minutes);
    }

    private static String place(Row row, String column, Known known) {
        String place = row.text(column);
        if (!row.blank(column) && !known.sites.known(new SiteId(place)) && !known.crews.known(new CrewId(place)))
            row.wrong(column, FolderWords.NO_PLACE.with(), FolderWords.A_PLACE.with());
        return place;
    }

    static Lines write(TravelTimes travel) {
        Lines lines = new Lines(ContractFiles.TRAVEL);
        travel.given().entrySet().stream()
                .sorted(Map.Entry.comparingByKey(Comparator.comparing(Leg::from).thenComparing(Leg::to)))
                .forEach(leg -> lines.add(leg.getKey().from(), leg.getKey().to(), leg.getValue()));
        return lines;
    }
}
