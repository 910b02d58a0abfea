package drylap.intake;

import drylap.assembly.Method;
import drylap.crews.Crew;
import drylap.intake.csv.Lines;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.Coded;
import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.kernel.Trade;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The rows of {@code crews.csv}. */
final class CrewRows {
    private CrewRows() {}

    static List<Crew> read(Table table, Known known) {
        List<Crew> crews = new ArrayList<>();
        table.each(row -> {
            Crew crew = crew(row);
            known.crews.claim(row, "crew", crew.id());
            notASite(row, crew.id(), known);
            known.crewById.putIfAbsent(crew.id(), crew);
            if (row.sound()) crews.add(crew);
        });
        return crews;
    }

    private static Crew crew(Row row) {
        return new Crew(
                new CrewId(row.text("crew")),
                row.coded("trade", Trade.class),
                methods(row),
                SiteRows.place(row),
                row.zone("time_zone"),
                row.optional(
                        "people",
                        column -> row.whole(column, FolderWords.PEOPLE.with(), Crew.FEWEST_PEOPLE, Crew.MOST_PEOPLE)));
    }

    private static Set<Method> methods(Row row) {
        Set<Method> methods = EnumSet.noneOf(Method.class);
        if (row.blank("methods")) return methods;
        for (String code : row.raw("methods").split(";", -1)) {
            var method = Coded.parse(Method.class, code);
            method.ifPresent(methods::add);
            if (method.isEmpty()) {
                String accepted = FolderWords.METHODS.with(Coded.codes(Method.class));
                row.wrong("methods", FolderWords.NO_METHOD.with(), accepted);
                return methods;
            }
        }
        return methods;
    }

    /** Travel legs name sites and crews in one column, so their ids must differ. */
    private static void notASite(Row row, CrewId crew, Known known) {
        if (row.sound() && known.sites.claimed(new SiteId(crew.value())))
            row.wrong("crew", FolderWords.ID_OF_SITE.with(), FolderWords.OWN_ID.with());
    }

    static Lines write(List<Crew> crews) {
        boolean told = crews.stream().anyMatch(crew -> crew.people() != null);
        Lines lines = new Lines(told ? ContractFiles.CREWS : ContractFiles.CREWS.without("people"));
        for (Crew crew : crews) lines.add(cells(crew, told));
        return lines;
    }

    private static @Nullable Object[] cells(Crew crew, boolean told) {
        List<@Nullable Object> cells = new ArrayList<>(List.of(
                crew.id(),
                crew.trade().code(),
                crew.methods().stream().sorted().map(Method::code).collect(Collectors.joining(";")),
                Lines.number(crew.base().latitude()),
                Lines.number(crew.base().longitude()),
                crew.zone().getId()));
        if (told) cells.add(crew.people());
        return cells.toArray();
    }
}
