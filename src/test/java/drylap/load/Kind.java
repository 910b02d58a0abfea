package drylap.load;

/** Kinds of requests that the trial tells apart. */
enum Kind {
    SIGN_IN("sign in"),
    WEEK_SHEET("week sheet, from address to drawn"),
    WEEK("week that an open sheet was told of"),
    WALL("wall of an opening, from address to drawn"),
    WEEK_PAPER("week as PDF"),
    MY_DAY("My day, from address to drawn"),
    DAY("stops of the day (/api/day)"),
    OPENING("an opening (/api/openings)"),
    MARKS("batch of marks (/api/marks)"),
    RELEASE("release (/api/releases)"),
    APRONS("aprons, from address to drawn"),
    READ_OPENING("an opening (/api/v1)"),
    TAKE_OVER("acceptance or return (/api/v1)"),
    PUSHED("from a confirmed mark to an open page"),
    OTHER("anything else");

    private final String words;

    Kind(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
