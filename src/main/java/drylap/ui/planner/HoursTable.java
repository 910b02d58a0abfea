package drylap.ui.planner;

import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.FacadeId;
import drylap.speech.Speech;
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
    static String called(Speech say, String wall) {
        return say.it("Hour by hour, {0}", wall);
    }

    static NativeTable of(Speech say, FolderShown shown, FacadeId facade) {
        NativeTable table = Panels.table(
                say.it("Hour"),
                say.it("Rain"),
                say.it("Chance"),
                say.it("Counts as rain"),
                say.it("On the wall"),
                say.it("Wets it"),
                say.it("Gust"),
                say.it("Temperature"),
                say.it("Light"),
                say.it("Open at its start for"));
        StripPresenter.hours(say, shown, facade).forEach(hour -> row(say, table, hour));
        return table;
    }

    private static void row(Speech say, NativeTable table, StripHour hour) {
        Panels.row(
                table,
                Panels.time("", hour.at()),
                hour.told().isPresent() ? number(hour, Told::rainMm, "mm") : Panels.text(say.it(hour.untold())),
                number(hour, Told::chance, "%"),
                Panels.text(hour.told()
                        .map(told -> say.it(told.counts() ? "counts" : "does not count"))
                        .orElse("")),
                number(hour, Told::wall, "l/m²"),
                Panels.text(hour.told()
                        .map(told -> say.it(told.wets() ? "wets it" : "does not wet it"))
                        .orElse("")),
                number(hour, Told::gustMs, "m/s"),
                number(hour, Told::celsius, "°C"),
                Panels.text(say.it(hour.dark() ? "dark" : "light")),
                Panels.text(
                        hour.open().isEmpty()
                                ? say.it("nothing")
                                : hour.open().stream()
                                        .map(task -> say.it(Words.task(task)))
                                        .collect(Collectors.joining(", "))));
    }

    private static Span number(StripHour hour, ToDoubleFunction<Told> of, String unit) {
        return hour.told()
                .map(told -> Panels.number("", of.applyAsDouble(told), unit))
                .orElseGet(() -> Panels.text(""));
    }
}
