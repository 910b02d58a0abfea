package drylap.speech;

import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;

/** What stands in the place of a sentence and is said anew to each who reads it. */
public sealed interface Part
        permits Saying, Part.Length, Part.CutLength, Part.Size, Part.Stretch, Part.When, Part.Dated {
    String in(Speech speech);

    /** As long as it is, by the reader's own ruler. */
    record Length(double millimetres) implements Part {
        @Override
        public String in(Speech speech) {
            return speech.length(millimetres);
        }
    }

    /** By both rulers, the reader's own first. */
    record CutLength(double millimetres) implements Part {
        @Override
        public String in(Speech speech) {
            return speech.lengths(millimetres);
        }
    }

    /** As rolls are measured: in metres, or in feet where someone reads inches. */
    record Stretch(double millimetres, int decimals) implements Part {
        @Override
        public String in(Speech speech) {
            return speech.stretch(millimetres, decimals);
        }
    }

    /** A width and a height. */
    record Size(double widthMm, double heightMm) implements Part {
        @Override
        public String in(Speech speech) {
            return speech.size(widthMm, heightMm);
        }
    }

    /** A day, or a day and its hour and minute: as much of it as is known, by the clock of whoever it is about. */
    record When(TemporalAccessor at) implements Part {
        @Override
        public String in(Speech speech) {
            return at.isSupported(ChronoField.HOUR_OF_DAY) ? speech.moment(at) : speech.day(at);
        }
    }

    /** The same with its year. */
    record Dated(TemporalAccessor at) implements Part {
        @Override
        public String in(Speech speech) {
            return speech.dated(at);
        }
    }
}
