package drylap.forecasts;

/**
 * One thing wrong with what a source sent.
 *
 * @param where the path of the value, such as {@code properties.windSpeed.values[3].value}, or a line of a file
 */
public record ForecastProblem(String where, String wrong, String accepted) {
    @Override
    public String toString() {
        return ForecastWords.PROBLEM.with(where, wrong, accepted);
    }
}
