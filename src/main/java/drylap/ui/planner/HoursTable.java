package drylap.ui.planner;

import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.FacadeId;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.StripHour;
import drylap.ui.drawn.StripHour.Told;
import drylap.ui.drawn.StripPresenter;
import drylap.ui.drawn.Words;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** A wall's forecast hour by hour, as spreadsheets have it; the screen's own table is drawn by the strip. */
final class HoursTable {
    private HoursTable() {}

    /** Many walls stand on one page, so that each says which it is. */
    static String called(String wall) {
        return "Hour by hour, " + wall;
    }

    static NativeTable of(FolderShown shown, FacadeId facade) {
        NativeTable table = Panels.table(
                "Hour",
                "Rain",
                "Chance",
                "Counts as rain",
                "On the wall",
                "Wets it",
                "Gust",
                "Temperature",
                "Light",
                "Open at its start for");
        StripPresenter.hours(shown, facade).forEach(hour -> row(table, hour));
        return table;
    }

    private static void row(NativeTable table, StripHour hour) {
        Panels.row(
                table,
                Panels.time("", hour.at()),
                hour.told().isPresent() ? number(hour, Told::rainMm, "mm") : Panels.text(hour.untold()),
                number(hour, Told::chance, "%"),
                Panels.text(hour.told().map(told -> yes(told.counts())).orElse("")),
                number(hour, Told::wall, "l/m²"),
                Panels.text(hour.told().map(told -> yes(told.wets())).orElse("")),
                number(hour, Told::gustMs, "m/s"),
                number(hour, Told::celsius, "°C"),
                Panels.text(hour.dark() ? "dark" : "light"),
                Panels.text(
                        hour.open().isEmpty()
                                ? "nothing"
                                : hour.open().stream().map(Words::task).collect(Collectors.joining(", "))));
    }

    private static Span number(StripHour hour, ToDoubleFunction<Told> of, String unit) {
        return hour.told()
                .map(told -> Panels.number("", of.applyAsDouble(told), unit))
                .orElseGet(() -> Panels.text(""));
    }

    private static String yes(boolean yes) {
        return yes ? "yes" : "no";
    }
}
