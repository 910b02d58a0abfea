package drylap.intake;

import drylap.intake.csv.Header;
import drylap.intake.csv.Table;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Set;
import java.util.TreeSet;

/** The files of one source as tables, each within the limits. */
final class FolderFiles {
    private final FolderSource source;
    private final Limits limits;
    private final Problems problems;
    private Set<String> names = Set.of();

    FolderFiles(FolderSource source, Limits limits, Problems problems) {
        this.source = source;
        this.limits = limits;
        this.problems = problems;
        source.problems().forEach(problems::add);
        if (problems.isEmpty()) list();
    }

    private void list() {
        try {
            names = source.files();
        } catch (UncheckedIOException e) {
            problems.add(Problem.ofFile(
                    source.describe(), FolderWords.NOT_LISTED.with(), FolderWords.READABLE_FOLDER.with()));
        }
    }

    Set<String> names() {
        return names;
    }

    Set<String> namesBeside(Set<String> expected) {
        Set<String> others = new TreeSet<>(names);
        others.removeAll(expected);
        return others;
    }

    /** The file must be there and hold a header and a row. */
    Table required(Header header) {
        Table table = optional(header);
        boolean there = names.contains(header.file());
        if (table.sound() && table.blank())
            table.report(
                    0,
                    "",
                    (there ? FolderWords.EMPTY : FolderWords.MISSING).with(),
                    "",
                    FolderWords.FILE_WITH_HEADER.with(header.text()));
        return table;
    }

    /** Says so when nothing came of a required file; to be asked once its rows are read. */
    static void checkRows(Table table) {
        if (table.sound() && table.rows() == 0)
            table.report(0, "", FolderWords.NO_ROWS.with(), "", FolderWords.A_ROW.with());
    }

    /** The file may be absent or empty; then it has no rows. */
    Table optional(Header header) {
        if (!names.contains(header.file())) return Table.absent(header, problems);
        try {
            long size = source.size(header.file());
            if (size > limits.fileBytes()) return tooLarge(header, Limits.size(size));
            try (InputStream in = source.open(header.file())) {
                byte[] bytes = in.readNBytes(Math.toIntExact(limits.fileBytes() + 1));
                return bytes.length > limits.fileBytes()
                        ? tooLarge(header, FolderWords.MORE_THAN_IT_SAYS.with())
                        : new Table(header, bytes, problems);
            }
        } catch (IOException e) {
            problems.add(Problem.ofFile(header.file(), FolderWords.NOT_READ.with(), FolderWords.READABLE_FILE.with()));
            return Table.unreadable(header, problems);
        }
    }

    private Table tooLarge(Header header, String size) {
        problems.add(new Problem(header.file(), 0, "", FolderWords.TOO_LARGE.with(), size, limits.fileText()));
        return Table.unreadable(header, problems);
    }
}
