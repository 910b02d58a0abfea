package drylap.ui.drawn;

import drylap.planning.CoverNow;
import drylap.planning.Plan;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.speech.Speech;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Openings that stand open and cannot be closed before the next rain, the next rain first. */
public record CoverNowList(List<Row> rows) {
    /**
     * An opening.
     *
     * @param rainAt by the clock on the wall of its site, as is {@code openAt}
     * @param openAt null where nobody recorded it
     */
    public record Row(
            String opening,
            String place,
            String openSince,
            String nextRain,
            int minutesToClose,
            LocalDateTime rainAt,
            @Nullable LocalDateTime openAt) {}

    public static CoverNowList of(Speech say, FolderShown shown) {
        return new CoverNowList(shown.plan().map(Plan::coverNow).orElse(List.of()).stream()
                .sorted(Comparator.comparing(CoverNow::nextRain).thenComparing(CoverNow::minutesToClose))
                .map(cover -> row(say, shown, cover))
                .toList());
    }

    private static Row row(Speech say, FolderShown shown, CoverNow cover) {
        Opening opening = shown.opening(cover.opening());
        Site site = shown.site(opening.facade().site());
        return new Row(
                opening.id().value(),
                say.it("{0}, level {1}", shown.title(opening.facade()), opening.level()),
                cover.openSince() == null ? say.it("not recorded") : say.moment(cover.openSince(), site.zone()),
                say.moment(cover.nextRain(), site.zone()),
                cover.minutesToClose(),
                LocalDateTime.ofInstant(cover.nextRain(), site.zone()),
                cover.openSince() == null ? null : LocalDateTime.ofInstant(cover.openSince(), site.zone()));
    }
}
