package drylap.cli;

import drylap.takeoff.AlikeRolls;
import drylap.takeoff.CutList;
import drylap.takeoff.DayList;
import drylap.takeoff.Extent;
import drylap.takeoff.SiteList;
import drylap.takeoff.Sums;
import drylap.takeoff.Supplies;
import drylap.takeoff.VanList;
import java.io.PrintWriter;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What is taken off, as lists to be read. */
final class TakeOffText {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    private final PrintWriter out;

    TakeOffText(PrintWriter out) {
        this.out = out;
    }

    /** Van by van and day by day. */
    void vans(List<VanList> vans) {
        if (vans.isEmpty()) out.println("No installs are planned that day for that crew.");
        for (VanList van : vans) {
            head("%s, %s".formatted(van.crew(), DAY.format(van.date())), van.supplies());
            for (CutList cut : van.supplies().cuts()) {
                out.printf("  %s%n", cut.saying().words());
                cut.rolls().forEach(roll -> out.printf("    %s%n", roll.saying().words()));
            }
            joints(van.supplies());
        }
        out.println(Supplies.FIRST);
    }

    /** All crews of each day together. */
    void days(List<DayList> days) {
        if (days.isEmpty()) out.println("No installs are planned that day.");
        for (DayList day : days) {
            head(DAY.format(day.date()), day.supplies());
            shares("crew", day.byCrew());
            rolls(day.supplies());
        }
        out.println(Supplies.FIRST);
    }

    void print(SiteList site) {
        String words = site.extent() == Extent.WHOLE ? "whole walls" : "what is left to put on";
        head("Site %s, %s".formatted(site.site(), words), site.supplies());
        shares("wall", site.byWall());
        rolls(site.supplies());
        out.println(Supplies.FIRST);
    }

    private void head(String of, Supplies supplies) {
        Sums sums = supplies.sums();
        out.printf("%s: %s%n", of, sums.counts().words());
        out.printf("  strips: %s%n", sums.lengths().words());
    }

    private void shares(String kind, Map<?, Sums> shares) {
        shares.forEach((name, sums) -> out.printf(
                "  %s %s: %s%s%n",
                kind,
                name,
                sums.isEmpty() ? "nothing is left to put on" : sums.counts().words(),
                sums.lengthsMm().isEmpty() ? "" : "; " + sums.lengths().words()));
    }

    private void rolls(Supplies supplies) {
        for (CutList cut : supplies.cuts()) {
            out.printf("  %s%n", cut.saying().words());
            cut.cuts().forEach(cuts -> out.printf("    %s%n", cuts.cut().words()));
            for (AlikeRolls rolls : cut.alike())
                out.printf("    %s: %s%n", rolls.name().words(), rolls.saying().words());
        }
        joints(supplies);
    }

    private void joints(Supplies supplies) {
        supplies.joints().forEach(how -> out.printf("  %s%n", how.words()));
        out.println();
    }
}
