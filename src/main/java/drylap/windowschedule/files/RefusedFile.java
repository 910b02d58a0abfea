package drylap.windowschedule.files;

/** A file, or a part of it, that is not read further. */
final class RefusedFile extends Exception {
    private final String where;
    private final String accepted;

    RefusedFile(String where, String wrong, String accepted) {
        super(wrong);
        this.where = where;
        this.accepted = accepted;
    }

    String where() {
        return where;
    }

    String wrong() {
        return String.valueOf(getMessage());
    }

    String accepted() {
        return accepted;
    }
}
