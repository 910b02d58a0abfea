package drylap.ui.planner;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.crews.Crew;
import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.sites.Site;
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

    private static String name(Crew crew) {
        return "%s, %s".formatted(crew.id(), Words.crewOf(crew.trade()));
    }

    /** One more crew, like one that is there. */
    static final class More extends ChangeFields {
        private final TextField crew = new TextField("Name of the new crew");
        private final Select<Crew> like = select("Like crew");
        private final Select<LocalDate> from = daySelect("From");

        More() {
            like.setHelperText("its trade, training, base and hours");
            add(crew, like, from);
        }

        @Override
        void offer(FolderShown shown) {
            fill(like, shown.folder().crews(), CrewFields::name);
            fill(from, days(shown));
        }

        @Override
        Change read(FolderShown shown) throws WrongField {
            String accepted = "a name of up to %d characters that no crew and no site has".formatted(LONGEST);
            String name = text(crew, LONGEST, accepted);
            boolean taken = shown.folder().crews().stream()
                            .anyMatch(one -> one.id().value().equals(name))
                    || shown.folder().sites().stream()
                            .anyMatch(one -> one.id().value().equals(name));
            if (taken) throw new WrongField(crew.getLabel(), "%s is taken".formatted(name), accepted);
            return new AddCrew(new CrewId(name), chosen(like).id(), chosen(from));
        }
    }

    /** A day without a crew, or without the crews of a site. */
    static final class LostDay extends ChangeFields {
        private record Who(@Nullable CrewId crew, @Nullable SiteId site, String words) {}

        private final Select<Who> who = select("Who does not come");
        private final Select<LocalDate> day = daySelect("Day");

        LostDay() {
            add(who, day);
        }

        @Override
        void offer(FolderShown shown) {
            fill(who, all(shown), Who::words);
            fill(day, days(shown));
        }

        private static List<Who> all(FolderShown shown) {
            return Stream.concat(
                            shown.folder().crews().stream().map(crew -> new Who(crew.id(), null, name(crew))),
                            shown.folder().sites().stream().map(LostDay::crewsOf))
                    .toList();
        }

        private static Who crewsOf(Site site) {
            return new Who(null, site.id(), "every crew of " + site.name());
        }

        @Override
        Change read(FolderShown shown) throws WrongField {
            Who away = chosen(who);
            return new DropDay(chosen(day), away.crew(), away.site());
        }
    }
}
