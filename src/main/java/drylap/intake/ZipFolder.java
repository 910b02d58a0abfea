package drylap.intake;

import java.io.FileNotFoundException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/** A zip file, its files at the top or all in one common folder. Nothing is unpacked to disk. */
final class ZipFolder implements FolderSource {
    private final Path zip;
    private final String called;
    private final Limits limits;
    private final Map<String, String> entryByFile = new TreeMap<>();
    private final Map<String, Long> sizes = new TreeMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private @Nullable String folder;

    ZipFolder(Path zip, Limits limits) {
        this(zip, zip.getFileName().toString(), limits);
    }

    /** @param name as whoever sent it calls it */
    ZipFolder(Path zip, String name, Limits limits) {
        this.zip = zip;
        called = name;
        this.limits = limits;
        try (ZipFile open = new ZipFile(zip.toFile())) {
            if (countAccepted(open)) open.stream().forEach(this::enter);
            checkTotal();
        } catch (ZipException e) {
            refuse("", FolderWords.NO_ZIP.with(), FolderWords.A_ZIP.with());
        } catch (IOException | IllegalArgumentException e) {
            refuse("", FolderWords.NOT_READ.with(), FolderWords.READABLE_ZIP.with());
        }
    }

    private boolean countAccepted(ZipFile open) {
        if (open.size() <= limits.files()) return true;
        refuse(
                Integer.toString(open.size()),
                FolderWords.MANY_ENTRIES.with(),
                FolderWords.MOST_ENTRIES.with(limits.files()));
        return false;
    }

    private void enter(ZipEntry entry) {
        String name = entry.getName();
        if (leavesTheZip(name)) {
            refuse(name, FolderWords.LEADS_OUT.with(), FolderWords.PLAIN_NAME.with());
            return;
        }
        List<String> path = List.of(name.split("/"));
        if (entry.isDirectory() || path.stream().anyMatch(ZipFolder::hidden)) return;
        String in = String.join("/", path.subList(0, path.size() - 1));
        if (folder == null) folder = in;
        if (path.size() > 2 || !in.equals(folder))
            refuse(name, FolderWords.MANY_FOLDERS.with(), FolderWords.ONE_FOLDER.with());
        else if (entryByFile.put(path.getLast(), name) != null)
            refuse(name, FolderWords.FILE_TWICE.with(), FolderWords.FILE_ONCE.with());
        sizes.put(path.getLast(), entry.getSize());
    }

    private static boolean leavesTheZip(String name) {
        return name.startsWith("/")
                || name.contains("\\")
                || name.contains(":")
                || List.of(name.split("/")).contains("..");
    }

    /** What operating systems add to a zip file on their own. */
    private static boolean hidden(String part) {
        return part.startsWith(".") || part.startsWith("__");
    }

    private void checkTotal() {
        long total = sizes.values().stream().mapToLong(Long::longValue).sum();
        if (total > limits.folderBytes())
            refuse(
                    Limits.size(total),
                    FolderWords.LARGE_UNPACKED.with(),
                    FolderWords.AT_MOST.with(Limits.size(limits.folderBytes())));
    }

    private void refuse(String value, String wrong, String accepted) {
        problems.add(new Problem(called, 0, "", wrong, value, accepted));
    }

    @Override
    public String describe() {
        return "zip file " + zip;
    }

    @Override
    public Set<String> files() {
        return new TreeSet<>(entryByFile.keySet());
    }

    @Override
    public long size(String file) {
        return sizes.getOrDefault(file, 0L);
    }

    @Override
    public InputStream open(String file) throws IOException {
        String entry = entryByFile.get(file);
        if (entry == null) throw new FileNotFoundException(file);
        ZipFile open = new ZipFile(zip.toFile());
        try {
            return new FilterInputStream(open.getInputStream(open.getEntry(entry))) {
                @Override
                public void close() throws IOException {
                    open.close();
                }
            };
        } catch (IOException e) {
            open.close();
            throw e;
        }
    }

    @Override
    public List<Problem> problems() {
        return List.copyOf(problems);
    }
}
