package drylap.intake;

import drylap.intake.csv.Header;
import drylap.intake.csv.Lines;
import drylap.season.Estimate;
import drylap.season.SiteOutlook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes outlooks of seasons as files; each row names the years and the seed, since the figures are theirs. */
public final class SeasonWriter {
    private static final Header MONTHS = Header.of(
            "outlook_months.csv",
            "site",
            "facade",
            "month",
            "work_days",
            "light_h",
            "usable_h",
            "usable_error_h",
            "usable_p10_h",
            "usable_p50_h",
            "usable_p90_h",
            "install_left_crew_h",
            "work_left_crew_h",
            "climate",
            "assumed",
            "years",
            "seed");
    private static final Header FACADES = Header.of(
            "outlook_facades.csv",
            "site",
            "facade",
            "due",
            "install_crew_h",
            "wrap_crew_h",
            "clad_crew_h",
            "through_5_of_10",
            "through_8_of_10",
            "through_9_of_10",
            "in_time",
            "in_time_error",
            "years",
            "seed");
    private static final Header ONE_MORE = Header.of(
            "outlook_one_more_crew.csv",
            "site",
            "trade",
            "month",
            "facade",
            "chance_gained",
            "chance_gained_error",
            "days_earlier",
            "days_earlier_error",
            "crew_days_more",
            "crew_days_cost",
            "late_cost_saved",
            "pays_from",
            "years",
            "seed");

    private final List<SiteOutlook> outlooks;

    private SeasonWriter(List<SiteOutlook> outlooks) {
        this.outlooks = outlooks;
    }

    /** @throws IOException where the target cannot be written */
    public static void write(List<SiteOutlook> outlooks, Path target) throws IOException {
        FolderWriter.write(new SeasonWriter(outlooks).lines(), target);
    }

    /** The files by name, as bytes. */
    public static Map<String, byte[]> files(List<SiteOutlook> outlooks) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (Lines lines : new SeasonWriter(outlooks).lines())
            files.put(lines.file(), lines.text().getBytes(StandardCharsets.UTF_8));
        return files;
    }

    private List<Lines> lines() {
        return List.of(months(), facades(), oneMore());
    }

    private Lines months() {
        Lines lines = new Lines(MONTHS);
        for (SiteOutlook site : outlooks)
            for (SiteOutlook.FacadeOutlook facade : site.facades())
                for (SiteOutlook.Month month : facade.months()) month(lines, site, facade, month);
        return lines;
    }

    private static void month(
            Lines lines, SiteOutlook site, SiteOutlook.FacadeOutlook facade, SiteOutlook.Month month) {
        lines.add(
                site.site(),
                facade.facade().facade(),
                month.month(),
                month.days(),
                rounded(month.light()),
                value(month.usable()),
                error(month.usable()),
                rounded(month.usable10()),
                rounded(month.usable50()),
                rounded(month.usable90()),
                rounded(month.installLeft()),
                rounded(month.workLeft()),
                site.climate(),
                Lines.yes(site.assumed()),
                site.years(),
                site.seed());
    }

    private Lines facades() {
        Lines lines = new Lines(FACADES);
        for (SiteOutlook site : outlooks)
            for (SiteOutlook.FacadeOutlook one : site.facades())
                lines.add(
                        site.site(),
                        one.facade().facade(),
                        one.due(),
                        rounded(one.installLeft()),
                        rounded(one.wrapLeft()),
                        rounded(one.cladLeft()),
                        one.through5(),
                        one.through8(),
                        one.through9(),
                        value(one.inTime()),
                        error(one.inTime()),
                        site.years(),
                        site.seed());
        return lines;
    }

    /** Rows without a month are of the whole time, rows without a facade of the whole site. */
    private Lines oneMore() {
        Lines lines = new Lines(ONE_MORE);
        for (SiteOutlook site : outlooks)
            for (SiteOutlook.OneMore more : site.oneMore()) {
                whole(lines, site, more);
                more.facades()
                        .forEach(one ->
                                part(lines, site, more, null, one.facade().facade(), one.gained(), one.daysEarlier()));
                more.months().forEach(one -> part(lines, site, more, one.month(), null, one.gained(), null));
            }
        return lines;
    }

    private static void whole(Lines lines, SiteOutlook site, SiteOutlook.OneMore more) {
        lines.add(
                site.site(),
                more.trade().code(),
                null,
                null,
                value(more.gained()),
                error(more.gained()),
                value(more.daysEarlier()),
                error(more.daysEarlier()),
                value(more.crewDays()),
                rounded(more.crewDayCost()),
                rounded(more.lateSaved()),
                more.pays(),
                site.years(),
                site.seed());
    }

    private static void part(
            Lines lines,
            SiteOutlook site,
            SiteOutlook.OneMore more,
            @Nullable Object month,
            @Nullable String facade,
            @Nullable Estimate gained,
            @Nullable Estimate earlier) {
        lines.add(
                site.site(),
                more.trade().code(),
                month,
                facade,
                value(gained),
                error(gained),
                value(earlier),
                error(earlier),
                null,
                null,
                null,
                null,
                site.years(),
                site.seed());
    }

    private static @Nullable String value(@Nullable Estimate figure) {
        return figure == null ? null : rounded(figure.value());
    }

    private static @Nullable String error(@Nullable Estimate figure) {
        return figure == null ? null : rounded(figure.error());
    }

    private static String rounded(double value) {
        return Lines.number(Math.rint(value * 1e4) / 1e4);
    }
}
