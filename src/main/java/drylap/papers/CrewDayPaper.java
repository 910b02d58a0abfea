package drylap.papers;

import drylap.speech.Speech;

/** A crew's day on paper: where to, what to load, each opening with what is to be ticked, and how the laps go. */
public final class CrewDayPaper {
    private final DaySheet day;
    private final Speech say;
    private final Sheet sheet;

    private CrewDayPaper(DaySheet day, Sheet sheet) {
        this.day = day;
        this.say = day.say();
        this.sheet = sheet;
    }

    /**
     * Prints a day.
     *
     * @throws IllegalArgumentException where a link is too long for a code
     */
    public static byte[] pdf(DaySheet day, Paper paper) {
        return Sheet.pdf(paper, day.say(), day.title(), day.origin(), sheet -> new CrewDayPaper(day, sheet).lay());
    }

    private void lay() {
        day.places().forEach(this::place);
        if (!day.load().isEmpty()) {
            sheet.heading(say.it("Load for this day"));
            day.load().forEach(words -> {
                sheet.paragraph(Style.TEXT, words);
                sheet.down(3);
            });
        }
        sheet.heading(say.it(day.stops().isEmpty() ? "No visits" : "In this order"));
        for (int i = 0; i < day.stops().size(); i++)
            new StopBlock(i + 1, day.stops().get(i), sheet).lay();
        new LapPairs(say, sheet).lay(day.kinds());
    }

    private void place(DaySheet.Place place) {
        sheet.need(Style.HEAD.leading() * (2 + place.address().size()));
        sheet.paragraph(Style.HEAD, place.name());
        place.address().forEach(line -> sheet.paragraph(Style.STRONG, line));
        sheet.paragraph(Style.TEXT, place.where());
        if (!place.holds().isEmpty())
            sheet.paragraph(
                    Style.STRONG,
                    say.it("Hold points, go on only when someone has looked: {0}", String.join("; ", place.holds())));
        sheet.down(6);
    }
}
