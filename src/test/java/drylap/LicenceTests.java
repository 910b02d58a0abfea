package drylap;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The list of libraries, made from software bills of materials (CycloneDX). To make it anew, with both bills in {@code target}, see DEVELOPERS.md.
 */
class LicenceTests {
    private static final Path LIST = Path.of("src/docs/licences.csv");
    private static final String HEAD = "group,artifact,version,licence,scope\n";

    /** What may be given on with a program under Apache-2.0; of a choice of licences one is enough. */
    private static final Set<String> GIVEN_ON = Set.of(
            "Apache-2.0",
            "MIT",
            "MIT-0",
            "0BSD",
            "BSD-2-Clause",
            "BSD-3-Clause",
            "BSD",
            "CC0-1.0",
            "EPL-2.0",
            "MPL-2.0",
            "Unicode-3.0");

    /** What only tests use is not given on. */
    private static final Set<String> FOR_TESTS = Set.of("LGPL-2.1", "GPL-2.0-with-classpath-exception");

    private record Library(String group, String artifact, String version, String licence, String scope) {
        String name() {
            return "%s:%s:%s".formatted(group, artifact, version);
        }

        List<String> licences() {
            return List.of(licence.split(" or "));
        }
    }

    @Test
    void every_library_on_the_class_path_is_listed_with_its_version() throws IOException {
        if ("write".equals(System.getProperty("drylap.licences"))) write();
        var listed = read().stream().map(Library::name).collect(Collectors.toSet());

        assertThat(onTheClassPath())
                .hasSizeGreaterThan(100)
                .allSatisfy(one -> assertThat(listed).contains(one));
    }

    @Test
    void every_licence_is_one_that_was_agreed() {
        assertThat(read())
                .isNotEmpty()
                .allSatisfy(one -> assertThat(one.licences())
                        .as(one.name())
                        .anyMatch(licence -> GIVEN_ON.contains(licence)
                                || (one.scope().equals("test") && FOR_TESTS.contains(licence))));
    }

    /** Which of two scopes is the bill's word; what the program itself asks for in pom.xml can be looked up here. */
    @Test
    void what_the_program_asks_for_is_no_library_of_tests() throws IOException {
        var tests = read().stream()
                .filter(one -> one.scope().equals("test"))
                .map(Library::artifact)
                .collect(Collectors.toSet());
        String asked = Files.readString(Path.of("pom.xml"));
        var direct = asked.substring(asked.indexOf("</dependencyManagement>"), asked.indexOf("<build>"))
                .lines()
                .filter(line -> line.contains("<dependency><groupId>") && !line.contains("<scope>test</scope>"))
                .map(line -> line.replaceFirst(".*<artifactId>(.+?)</artifactId>.*", "$1"))
                .toList();

        assertThat(direct).hasSizeGreaterThan(15).doesNotContainAnyElementsOf(tests);
    }

    private static List<String> onTheClassPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> entry.endsWith(".jar"))
                .map(Path::of)
                .flatMap(jar -> inTheRepository(jar).stream())
                .distinct()
                .toList();
    }

    /** Maven keeps a library in a folder of its group, its name and its version. */
    private static Optional<String> inTheRepository(Path jar) {
        String folders = jar.toString().replace(File.separatorChar, '/');
        int begin = folders.indexOf("/repository/");
        if (begin < 0) return Optional.empty();
        List<String> parts =
                List.of(folders.substring(begin + "/repository/".length()).split("/"));
        int last = parts.size() - 1;
        return Optional.of("%s:%s:%s"
                .formatted(String.join(".", parts.subList(0, last - 2)), parts.get(last - 2), parts.get(last - 1)));
    }

    private static List<Library> read() {
        var format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = CSVParser.parse(LIST, StandardCharsets.UTF_8, format)) {
            return parser.stream()
                    .map(line -> new Library(
                            line.get("group"),
                            line.get("artifact"),
                            line.get("version"),
                            line.get("licence"),
                            line.get("scope")))
                    .toList();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private static void write() throws IOException {
        var program = names(Path.of("target/bom.json"));
        var lines = new TreeSet<String>();
        for (JsonNode one : bill(Path.of("target/bom-tests.json"))) {
            String name = name(one);
            lines.add("%s,%s,%s\n"
                    .formatted(name.replace(':', ','), licence(one), program.contains(name) ? "program" : "test"));
        }
        Files.writeString(LIST, HEAD + String.join("", lines));
    }

    private static Set<String> names(Path file) {
        return bill(file).valueStream().map(LicenceTests::name).collect(Collectors.toSet());
    }

    private static JsonNode bill(Path file) {
        return JsonMapper.builder().build().readTree(file).path("components");
    }

    private static String name(JsonNode one) {
        return "%s:%s:%s"
                .formatted(
                        one.path("group").stringValue(),
                        one.path("name").stringValue(),
                        one.path("version").stringValue());
    }

    private static String licence(JsonNode one) {
        return one.path("licenses")
                .valueStream()
                .map(entry -> entry.path("license"))
                .map(licence -> licence.path("id").isString()
                        ? licence.path("id").stringValue()
                        : licence.path("name").stringValue())
                .map(LicenceTests::inShort)
                .collect(Collectors.joining(" or "));
    }

    /**
     * As SPDX writes it. Where a library says "The BSD License" the bill takes it for the one of four clauses; that is not said by any of them.
     */
    private static String inShort(String licence) {
        return switch (licence) {
            case "BSD-4-Clause", "BSD licence" -> "BSD";
            case "FreeBSD License" -> "BSD-2-Clause";
            case "Mozilla Public License Version 2.0" -> "MPL-2.0";
            case "GNU Lesser General Public License",
                    "LGPL-2.1-only",
                    "LGPL-2.1-or-later",
                    "GNU Lesser General Public License (LGPL), Version 2.1",
                    "GNU LESSER GENERAL PUBLIC LICENSE, Version 2.1, February 1999" -> "LGPL-2.1";
            case "GNU General Public License (GPL), version 2, with the Classpath exception" ->
                "GPL-2.0-with-classpath-exception";
            default -> licence.replace(',', ' ');
        };
    }
}
