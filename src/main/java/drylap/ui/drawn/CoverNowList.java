package drylap.ui.drawn;

import drylap.planning.CoverNow;
import drylap.planning.Plan;
import drylap.sites.Opening;
import drylap.sites.Site;
import java.util.Comparator;
import java.util.List;

/** Openings that stand open and cannot be closed before the next rain, the next rain first. */
public record CoverNowList(List<Row> rows) {
    public record Row(String opening, String place, String openSince, String nextRain, int minutesToClose) {}

    public static CoverNowList of(FolderShown shown) {
        return new CoverNowList(shown.plan().map(Plan::coverNow).orElse(List.of()).stream()
                .sorted(Comparator.comparing(CoverNow::nextRain).thenComparing(CoverNow::minutesToClose))
                .map(cover -> row(shown, cover))
                .toList());
    }

    private static Row row(FolderShown shown, CoverNow cover) {
        Opening opening = shown.opening(cover.opening());
        Site site = shown.site(opening.facade().site());
        return new Row(
                opening.id().value(),
                "%s, level %d".formatted(shown.title(opening.facade()), opening.level()),
                cover.openSince() == null ? "not recorded" : Words.moment(cover.openSince(), site.zone()),
                Words.moment(cover.nextRain(), site.zone()),
                cover.minutesToClose());
    }
}
