package drylap.ui.windowcrew;

import drylap.kernel.CrewId;
import drylap.planning.CurrentFolders;
import drylap.planning.Plans;
import drylap.planning.Publication;
import drylap.planning.Publications;
import drylap.planning.StoredFolder;
import drylap.platform.News;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.takeoff.TakeOff;
import drylap.takeoff.VanList;
import drylap.ui.drawn.CrewDay;
import drylap.ui.drawn.CrewDayPresenter;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.PlanChoice;
import drylap.ui.shell.Shared;
import drylap.ui.shell.Sight;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** What a crew works by: the folder in work as it stands by now, with its published plan, as far as a person may see it. */
@Component
class CrewDesk {
    private final Publications publications;
    private final CurrentFolders current;
    private final Plans plans;
    private final Clock clock;
    private final Shared<FolderShown> shared;

    CrewDesk(Publications publications, CurrentFolders current, Plans plans, Clock clock, News news) {
        this.publications = publications;
        this.current = current;
        this.plans = plans;
        this.clock = clock;
        shared = new Shared<>(news, FolderShown::orNewer);
    }

    /** Nothing before anything was published. */
    Optional<FolderShown> shown(Person who) {
        who.demand(Operation.SEE_CREW_DAY);
        return published().map(one -> shared.own(Sight.of(who, one), () -> shown(who, one)));
    }

    /** The same after news, once for all pages that are told of them. */
    Optional<FolderShown> told(Person who) {
        who.demand(Operation.SEE_CREW_DAY);
        return published().map(one -> shared.told(Sight.of(who, one), () -> shown(who, one)));
    }

    private Optional<Publication> published() {
        return publications.inWork().flatMap(publications::latest);
    }

    /** Whose day this person may look at: their own crew's, or, for whoever plans, anyone's. */
    List<CrewId> crews(Person who, FolderShown shown) {
        return shown.folder().crews().stream()
                .map(crew -> crew.id())
                .filter(crew -> who.may(Operation.SEE_WEEK_SHEET) || crew.equals(who.crew()))
                .toList();
    }

    /** Today by the crew's own clock. */
    LocalDate today(FolderShown shown, CrewId crew) {
        return shown.folder().crews().stream()
                .filter(one -> one.id().equals(crew))
                .findFirst()
                .map(one -> LocalDate.ofInstant(clock.instant(), one.zone()))
                .orElseThrow();
    }

    CrewDay day(Speech say, FolderShown shown, CrewId crew, LocalDate date) {
        return CrewDayPresenter.day(say, shown, crew, date, clock.instant());
    }

    /** What the crew loads for its installs of a day that are left to do; nothing where there is none. */
    Optional<VanList> load(FolderShown shown, CrewId crew, LocalDate date) {
        return shown.plan()
                .flatMap(plan -> TakeOff.ofDay(shown.folder(), plan, crew, date))
                .filter(load -> !load.supplies().isEmpty());
    }

    private FolderShown shown(Person who, Publication published) {
        var folder = current.load(who, published.folder());
        var plan = plans.load(who, published.plan()).plan();
        var stored = new StoredFolder(
                published.folder(),
                "",
                published.at(),
                folder.sites().size(),
                folder.openings().size());
        return new FolderShown(stored, folder, new PlanChoice(null, published, plan, true));
    }
}
