package drylap.ui.planner;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.crews.Crew;
import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.Words;
import drylap.whatif.AddCrew;
import drylap.whatif.Change;
import drylap.whatif.DropDay;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Changes of who comes. */
final class CrewFields {
    private static final int LONGEST = 40;

    private CrewFields() {}

    private static String name(Speech say, Crew crew) {
        return "%s, %s".formatted(crew.id(), say.it(Words.crewOf(crew.trade())));
    }

    /** One more crew, like one that is there. */
    static final class More extends ChangeFields {
        private final TextField crew = new TextField(say.it("Name of the new crew"));
        private final Select<Crew> like = select(say.it("Like crew"));
        private final Select<LocalDate> from = daySelect(say.it("From"));

        More(Speech say) {
            super(say);
            like.setHelperText(say.it("its trade, training, base and hours"));
            add(crew, like, from);
        }

        @Override
        void offer(FolderShown shown) {
            fill(like, shown.folder().crews(), one -> name(say, one));
            fill(from, days(shown));
        }

        @Override
        Change read(FolderShown shown) throws WrongField {
            Saying accepted = Saying.of("a name of up to {0} characters that no crew and no site has", LONGEST);
            String name = text(crew, LONGEST, accepted);
            boolean taken = shown.folder().crews().stream()
                            .anyMatch(one -> one.id().value().equals(name))
                    || shown.folder().sites().stream()
                            .anyMatch(one -> one.id().value().equals(name));
            if (taken) throw new WrongField(crew.getLabel(), Saying.of("{0} is taken", name), accepted);
            return new AddCrew(new CrewId(name), chosen(like).id(), chosen(from));
        }
    }

    /** A day without a crew, or without the crews of a site. */
    static final class LostDay extends ChangeFields {
        private record Who(@Nullable CrewId crew, @Nullable SiteId site, String words) {}

        private final Select<Who> who = select(say.it("Who does not come"));
        private final Select<LocalDate> day = daySelect(say.it("Day"));

        LostDay(Speech say) {
            super(say);
            add(who, day);
        }

        @Override
        void offer(FolderShown shown) {
            fill(who, all(shown), Who::words);
            fill(day, days(shown));
        }

        private List<Who> all(FolderShown shown) {
            return Stream.concat(
                            shown.folder().crews().stream().map(crew -> new Who(crew.id(), null, name(say, crew))),
                            shown.folder().sites().stream().map(this::crewsOf))
                    .toList();
        }

        private Who crewsOf(Site site) {
            return new Who(null, site.id(), say.it("every crew of {0}", site.name()));
        }

        @Override
        Change read(FolderShown shown) throws WrongField {
            Who away = chosen(who);
            return new DropDay(chosen(day), away.crew(), away.site());
        }
    }
}
