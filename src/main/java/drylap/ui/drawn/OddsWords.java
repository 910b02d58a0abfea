package drylap.ui.drawn;

import drylap.risk.DateFigure;
import drylap.risk.Figure;
import drylap.risk.OddsPart;
import drylap.risk.RiskReport.ClimateUsed;
import drylap.speech.Speech;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;

/** Chances and dates from trials in words, each with how far off it may be by chance. */
public final class OddsWords {
    static final String LATER = "later than the six weeks that are looked at";
    private static final double HOUR_MINUTES = 60;

    private OddsWords() {}

    /** Such as "71 ± 1 of 100"; what never or always came is no certainty, so its trials are named. */
    static String chance(Speech say, Figure figure, int trials) {
        if (figure.value() <= 0) return say.it("none of {0} trials", Words.number(trials));
        if (figure.value() >= 1) return say.it("all of {0} trials", Words.number(trials));
        boolean whole = figure.error() >= 0.0095;
        return say.it("{0} ± {1} of 100", percent(figure.value(), whole), percent(figure.error(), whole));
    }

    private static String percent(double share, boolean whole) {
        return String.format(Locale.ROOT, whole ? "%.0f" : "%.1f", share * 100);
    }

    static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f", share * 100);
    }

    static String mean(Figure figure) {
        String form = figure.error() < 0.05 ? "%.2f ± %.2f" : "%.1f ± %.1f";
        return String.format(Locale.ROOT, form, figure.value(), figure.error());
    }

    /** Such as "In 8 of 10 cases by Thu 16 Apr 14:30 ± 0.6 h". */
    static String by(Speech say, int ofTen, DateFigure figure, ZoneId zone) {
        if (figure.at() == null) return say.it("In {0} of 10 cases later than the six weeks that are looked at", ofTen);
        String moment = say.moment(figure.at(), zone);
        return figure.error() == null
                ? say.it("In {0} of 10 cases by {1}", ofTen, moment)
                : say.it("In {0} of 10 cases by {1} ± {2} h", ofTen, moment, hours(figure.error()));
    }

    static String hours(Duration error) {
        return String.format(Locale.ROOT, "%.1f", error.toMinutes() / HOUR_MINUTES);
    }

    /** Where the weather of a day comes from. */
    static SkySource weather(LocalDate day, ClimateUsed climate, ZoneId zone) {
        if (climate.forecastEnd() == null || !day.atStartOfDay(zone).toInstant().isBefore(climate.forecastEnd()))
            return SkySource.CLIMATE;
        boolean whole = !day.plusDays(1).atStartOfDay(zone).toInstant().isAfter(climate.forecastEnd());
        return whole ? SkySource.FORECAST : SkySource.PARTLY;
    }

    static String part(Speech say, OddsPart part) {
        return switch (part) {
            case LOG -> say.it("what is done at the openings");
            case FORECASTS -> say.it("the forecast");
            case NORMALS -> say.it("the monthly normals");
            case DURATIONS -> say.it("the install minutes");
            case RULES -> say.it("the rules");
            case SHIFTS -> say.it("who comes when");
            case DAY -> say.it("the day: work that was due before goes on from today");
        };
    }
}
