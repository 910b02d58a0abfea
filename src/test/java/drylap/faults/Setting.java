package drylap.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What there is before anything is broken: an account, a folder to mark, one to publish plans of and one to plan. */
final class Setting {
    private static final int MARKED_OPENINGS = 1_500;
    private static final int PLANNED_OPENINGS = 60;
    private static final int SEARCHED_OPENINGS = 200;
    private static final Pattern CODE = Pattern.compile("give this code, which is good once: (\\S+)");

    private final long marked;
    private final long planned;
    private final long searched;
    private final List<Long> plans = new ArrayList<>();
    private final List<String> openings = new ArrayList<>();
    private volatile @Nullable Long seen;

    private Setting(Cluster cluster, Program program, Book book) throws Exception {
        TrialNode web = cluster.webs.getFirst();
        begin(program, web);
        program.withToken(program.ask(web, "/token?for=trial"));
        marked = bringIn(program, book, web, "marked", MARKED_OPENINGS);
        planned = bringIn(program, book, web, "planned", PLANNED_OPENINGS);
        searched = bringIn(program, book, web, "searched", SEARCHED_OPENINGS);
        for (int node = 0; node < Cluster.WEBS; node++)
            plans.add(Long.valueOf(program.ask(web, "/plan?folder=" + planned)));
        try (Connection database = cluster.postgres.connection()) {
            readOpenings(database);
        }
    }

    static Setting of(Cluster cluster, Program program, Book book) throws Exception {
        return new Setting(cluster, program, book);
    }

    private static long bringIn(Program program, Book book, TrialNode web, String name, int openings)
            throws IOException, InterruptedException {
        book.ask(Names.bringIn(name, openings));
        long folder = Long.parseLong(program.ask(web, "/import?name=%s&openings=%d&seed=1".formatted(name, openings)));
        book.confirm(Names.bringIn(name, openings), 0);
        return folder;
    }

    /** The first account. */
    static void begin(Program program, TrialNode web) throws IOException, InterruptedException {
        program.ask(web, "/begin?code=%s&password=%s".formatted(code(web), Program.PASSWORD));
    }

    private static String code(TrialNode web) throws IOException {
        var found = CODE.matcher(Files.readString(web.console()));
        if (!found.find()) throw new IllegalStateException("no code for the first account in " + web.console());
        return found.group(1);
    }

    private void readOpenings(Connection database) throws SQLException {
        try (var statement = database.createStatement();
                var rows = statement.executeQuery(
                        "select opening from opening where folder_id = %d order by 1".formatted(marked))) {
            while (rows.next()) openings.add(rows.getString(1));
        }
    }

    long marked() {
        return marked;
    }

    long planned() {
        return planned;
    }

    long searched() {
        return searched;
    }

    long plan(int node) {
        return plans.get(node);
    }

    /** In turn. */
    String opening(int number) {
        return openings.get(number % openings.size());
    }

    @Nullable
    Long seen() {
        return seen;
    }

    synchronized void saw(long publication) {
        Long before = seen;
        if (before == null || publication > before) seen = publication;
    }
}
