package drylap.ui.followon;

import drylap.handoff.HandoffAct;
import drylap.handoff.HandoffRecords;
import drylap.planning.Publications;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Openings;
import drylap.sites.Sites;
import drylap.speech.Speech;
import drylap.ui.drawn.HandoffPaper;
import drylap.ui.drawn.HandoffPapers;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** Fetches the records of handing over. */
@Service
final class RecordDesk {
    private static final int AT_MOST = 2_000;

    private final Publications publications;
    private final HandoffRecords records;
    private final Sites sites;
    private final Openings openings;

    RecordDesk(Publications publications, HandoffRecords records, Sites sites, Openings openings) {
        this.publications = publications;
        this.records = records;
        this.sites = sites;
        this.openings = openings;
    }

    /** The acts of the folder in work, with what puts them on paper. */
    record Shelf(List<HandoffAct> acts, HandoffPapers papers) {}

    Shelf shelf(Person who) {
        who.demand(Operation.SEE_HANDOFF_RECORD);
        return publications
                .inWork()
                .map(folder -> new Shelf(
                        records.of(who, folder, AT_MOST),
                        new HandoffPapers(
                                new Speech(who.reading()), sites.of(folder), openings.within(folder, who.reach()))))
                .orElseGet(
                        () -> new Shelf(List.of(), new HandoffPapers(new Speech(who.reading()), List.of(), List.of())));
    }

    /** Empty where there is none, or where it is not the person's to see. */
    Optional<HandoffPaper> paper(Person who, long id) {
        return records.find(who, id).map(act -> {
            var shelf = shelf(who);
            boolean there = shelf.acts().stream().anyMatch(one -> one.id() == id);
            return shelf.papers().paper(act, there ? shelf.acts() : List.of(act));
        });
    }
}
