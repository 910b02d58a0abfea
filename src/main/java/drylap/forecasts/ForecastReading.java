package drylap.forecasts;

import java.util.List;

/** What came of reading a source's bytes: a whole forecast, or everything that is wrong with them. */
public sealed interface ForecastReading {
    record Read(ReadForecast forecast) implements ForecastReading {}

    /** @param more how many problems were found beyond those that are listed */
    record Refused(List<ForecastProblem> problems, int more) implements ForecastReading {
        public Refused {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) throw new IllegalArgumentException("refused without a reason");
        }

        /** The first problem, and how many there are. */
        public String summary() {
            int others = problems.size() - 1 + more;
            String first = problems.getFirst().toString();
            return others == 0 ? first : ForecastWords.PROBLEMS.with(first, others);
        }
    }
}
