package drylap.audit;

/** A rule of the planning contract, by the section in which it stands; {@code hard} ones make a list of visits no plan. */
public enum ContractRule {
    KNOWN("1", true, "every crew and opening stands in the job folder"),
    TASK_NEEDED("2", true, "the opening still needs the task"),
    MINUTES("2", true, "a task lasts as long as the labour table says"),
    SETUP("2", true, "set-up minutes lie in front of a task"),
    UNBROKEN("2", true, "an install lies in one shift and not across its break"),
    ONCE("3", true, "each task stands once, in the visits or in the unplanned"),
    TRADE("3.1", true, "a crew does tasks of its own trade"),
    TRAINED("3.1", true, "a window crew does methods that it is trained for"),
    ONE_AT_A_TIME("3.1", true, "a crew does one task at a time"),
    SHIFT("3.2", true, "a task lies inside its crew's shift"),
    TRAVEL("3.2", true, "a crew has time to get to the site"),
    HOME("3.2", true, "a crew is back at its base inside the shift"),
    BREAK("3.2", true, "no task runs in the break"),
    DELIVERY("3.3", true, "no install before the day of delivery"),
    CURE("3.4", true, "no test before the sealant has cured"),
    WRAP_COURSE("3.5", true, "wrap follows all installs and tests of its course"),
    WRAP_BELOW("3.5", true, "wrap follows the wrap of the course below"),
    CLAD_COURSE("3.6", true, "cladding follows the wrap of its course, or its installs and tests"),
    CLAD_BELOW("3.6", true, "cladding follows the cladding of the course below"),
    APRON("3.7", true, "wrap ends before an apron of its course was free too long"),
    BARE("3.7", true, "an opening without barrier is wrapped in time"),
    RAINING("3.8", true, "shut: it is to rain"),
    DRYING("3.8", true, "shut: rain has wetted the wall and it still dries"),
    COLD("3.8", true, "shut: too cold"),
    GUST("3.8", true, "shut: gusts too strong"),
    DARK("3.8", true, "shut: dark"),
    SKIN("3.8", true, "shut for an install's end: the sealant cannot skin before rain"),
    PINNED("3.9", true, "a pinned visit stays as it is"),
    START("3", true, "nothing unpinned starts before the plan does"),
    REASON("3", false, "an unplanned task gives one of the known reasons"),
    OPEN_HOURS("4", false, "the open hours are those of the forecast"),
    COVER_NOW("5", false, "the list of openings to cover now is right"),
    LEDGER_TERM("5", false, "each line of the ledger is right"),
    HARD("5", false, "the ledger counts no broken rule"),
    MEDIUM("5", false, "the ledger's cost of what is left out is right"),
    SOFT("5", false, "the ledger's sum is right"),
    SORTED("6", false, "visits are sorted by crew, then start"),
    SEQUENCE("6", false, "the sequence counts a crew's tasks of a day from 1"),
    DATE("6", false, "the date is the day of the shift"),
    PLACE("6", false, "site, facade and level are the opening's own");

    private final String section;
    private final boolean hard;
    private final String words;

    ContractRule(String section, boolean hard, String words) {
        this.section = section;
        this.hard = hard;
        this.words = words;
    }

    public String section() {
        return section;
    }

    public boolean hard() {
        return hard;
    }

    public String words() {
        return words;
    }
}
