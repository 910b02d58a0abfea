package drylap.roughopening;

import drylap.kernel.Coded;
import drylap.speech.Saying;
import java.util.Comparator;
import java.util.List;

/** What measured sizes mean for the window that is to go in: the worst of its findings, each with its limit and where that comes from. */
public record RoughVerdict(Grade grade, List<Finding> findings) {
    public RoughVerdict {
        findings = List.copyOf(findings);
    }

    static RoughVerdict of(List<Finding> findings) {
        return new RoughVerdict(
                findings.stream()
                        .map(Finding::grade)
                        .max(Comparator.naturalOrder())
                        .orElse(Grade.FITS),
                findings);
    }

    /** From good to bad. */
    public enum Grade implements Coded {
        FITS("fits", "fits", "Set the window; nothing measured is beyond its tolerance."),
        SHIM(
                "shim",
                "fits with shims",
                "The window goes in, and is set plumb, level and square on shims; the opening itself is beyond a tolerance."),
        REPORT(
                "report",
                "does not fit",
                "Do not set the window and do not trim it. Report it to the scheduler: the framing has to be put right first.");

        private final String code;
        private final String words;
        private final String meaning;

        Grade(String code, String words, String meaning) {
            this.code = code;
            this.words = words;
            this.meaning = meaning;
        }

        @Override
        public String code() {
            return code;
        }

        public String words() {
            return words;
        }

        /** What is to be done. */
        public String meaning() {
            return meaning;
        }
    }

    /** @param source where the limit comes from */
    public record Finding(Grade grade, Saying saying, String source) {
        public String words() {
            return saying.words();
        }
    }
}
