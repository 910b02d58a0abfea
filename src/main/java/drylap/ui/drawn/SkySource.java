package drylap.ui.drawn;

/** Where the weather of a day comes from when a plan is replayed; what is known least comes first. */
enum SkySource {
    CLIMATE("climate"),
    PARTLY("partly climate"),
    FORECAST("forecast");

    private final String words;

    SkySource(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
