package drylap.ui.planner;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.timepicker.TimePicker;
import drylap.kernel.TimeWindow;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.whatif.Change;
import drylap.whatif.OtherRain;
import drylap.whatif.RainByPercent;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;

/** Other weather. */
final class RainFields {
    private RainFields() {}

    /** Rain for certain, or none, over some hours at a site. */
    static final class Hours extends ChangeFields {
        private final boolean rains;
        private final Select<Site> site = select(say.it("Site"));
        private final Select<LocalDate> day = daySelect(say.it("Day"));
        private final TimePicker from = new TimePicker(say.it("From hour"));
        private final TimePicker until = new TimePicker(say.it("Until hour"));

        Hours(Speech say, boolean rains) {
            super(say);
            this.rains = rains;
            for (var time : new TimePicker[] {from, until}) {
                time.setStep(Duration.ofHours(1));
                time.setLocale(Locale.UK);
            }
            from.setValue(LocalTime.of(8, 0));
            until.setValue(LocalTime.of(12, 0));
            until.setHelperText(say.it("by the site's clock"));
            add(site, day, from, until);
        }

        @Override
        void offer(FolderShown shown) {
            fill(site, shown.folder().sites(), Site::name);
            fill(day, days(shown));
        }

        @Override
        Change read(FolderShown shown) throws WrongField {
            Site at = chosen(site);
            LocalDate date = chosen(day);
            LocalTime first = time(from);
            LocalTime last = time(until);
            if (!first.isBefore(last))
                throw new WrongField(
                        until.getLabel(),
                        Saying.of("{0} is not after {1}", last, first),
                        Saying.of("a later hour is accepted"));
            return new OtherRain(
                    at.id(),
                    new TimeWindow(
                            date.atTime(first).atZone(at.zone()).toInstant(),
                            date.atTime(last).atZone(at.zone()).toInstant()),
                    rains);
        }

        private static LocalTime time(TimePicker picker) throws WrongField {
            if (picker.isEmpty())
                throw new WrongField(
                        picker.getLabel(), Saying.of("is blank"), Saying.of("an hour like 08:00 is accepted"));
            return picker.getValue();
        }
    }

    /** Every hour's rain, more or less. */
    static final class Percent extends ChangeFields {
        private static final int LEAST = -100;
        private static final int MOST = 1000;

        private final TextField percent = new TextField(say.it("Per cent"));

        Percent(Speech say) {
            super(say);
            percent.setHelperText(say.it("-50 is half the rain, 100 is twice"));
            add(percent);
        }

        @Override
        void offer(FolderShown shown) {
            // nothing to choose from
        }

        @Override
        Change read(FolderShown shown) throws WrongField {
            return new RainByPercent(whole(percent, LEAST, MOST));
        }
    }
}
