package drylap.forecasts.formats;

import drylap.forecasts.ForecastProblem;
import drylap.forecasts.ForecastReading;
import java.util.ArrayList;
import java.util.List;

/** All that is wrong with one answer; the first of very many are kept, the rest counted. */
final class Findings {
    private static final int KEPT = 20;
    private static final int LONGEST_SHOWN = 80;

    private final List<ForecastProblem> kept = new ArrayList<>();
    private int found;

    void add(String where, String wrong, String accepted) {
        if (found++ < KEPT) kept.add(new ForecastProblem(where, wrong, accepted));
    }

    boolean none() {
        return found == 0;
    }

    ForecastReading.Refused refused() {
        return new ForecastReading.Refused(kept, found - kept.size());
    }

    /** A value may be anything at all, so it is cut and its control characters are made visible. */
    static String shown(String value) {
        StringBuilder text = new StringBuilder();
        value.codePoints().limit(LONGEST_SHOWN).forEach(c -> {
            if (Character.isISOControl(c)) text.append("\\u%04x".formatted(c));
            else text.appendCodePoint(c);
        });
        return value.length() > LONGEST_SHOWN ? text + "…" : text.toString();
    }
}
