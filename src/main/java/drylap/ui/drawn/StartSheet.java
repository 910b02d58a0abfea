package drylap.ui.drawn;

import drylap.speech.Saying;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** What is there and what is missing next, in the order of work, for whoever plans or lets people in. */
public record StartSheet(List<Line> lines) {
    /** One thing to have, and where it is done. */
    public enum Step {
        SITE("A site with its place"),
        WALLS("Its walls, and which way they face"),
        OPENINGS("The openings, from a window schedule"),
        CREWS("Crews and their days"),
        FORECAST("A forecast"),
        PLAN("A plan"),
        PUBLISHED("The plan published, so that crews see it"),
        PLANNER("Someone who plans"),
        ACCOUNTS("Sign-ins for the crews");

        private final String words;

        Step(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** How a line stands. */
    public enum Standing {
        DONE("done"),
        NEXT("next"),
        LATER("later"),
        /** Missing, and nothing waits for it. */
        OPTIONAL("if you like");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** @param said what is there of it, or what is missing */
    public record Line(Step step, Standing standing, Saying said) {}

    private static final Set<Step> MAY_WAIT = Set.of(Step.FORECAST, Step.ACCOUNTS);

    public StartSheet {
        lines = List.copyOf(lines);
    }

    public static StartSheet of(StartFacts facts) {
        boolean[] open = {true};
        return new StartSheet(Arrays.stream(Step.values())
                .filter(facts::concerns)
                .map(step -> new Line(step, standing(facts, step, open), StartWords.of(facts, step)))
                .toList());
    }

    /** The first that is missing is next; what may wait is never it. */
    private static Standing standing(StartFacts facts, Step step, boolean[] open) {
        if (facts.done(step)) return Standing.DONE;
        if (MAY_WAIT.contains(step)) return Standing.OPTIONAL;
        boolean next = open[0];
        open[0] = false;
        return next ? Standing.NEXT : Standing.LATER;
    }

    /** Nothing is missing that anything waits for. */
    public boolean complete() {
        return lines.stream().noneMatch(line -> line.standing() == Standing.NEXT);
    }
}
