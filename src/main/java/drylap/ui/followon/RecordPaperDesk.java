package drylap.ui.followon;

import drylap.handoff.HandoffAct;
import drylap.handoff.HandoffRecords;
import drylap.handoff.HoldPoints;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.papers.RecordSheet;
import drylap.planning.Publications;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.progress.Photo;
import drylap.progress.Photos;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Sites;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.RecordPaperPresenter;
import drylap.ui.drawn.RecordPaperPresenter.Beside;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** Gathers what a hand-over record says on paper, for those who may see it. */
@Service
final class RecordPaperDesk {
    /** Eight pages; the screen has all. */
    private static final int MOST_PHOTOS = 32;

    private final RecordDesk desk;
    private final HandoffRecords records;
    private final Publications publications;
    private final Facts facts;
    private final Photos photos;
    private final Clock clock;

    RecordPaperDesk(
            RecordDesk desk,
            HandoffRecords records,
            Publications publications,
            Facts facts,
            Photos photos,
            Clock clock) {
        this.desk = desk;
        this.records = records;
        this.publications = publications;
        this.facts = facts;
        this.photos = photos;
        this.clock = clock;
    }

    /** How openings stood, and what a site holds. */
    @Service
    record Facts(OpeningStates states, HoldPoints holdPoints, Sites sites) {}

    /** Empty where there is none, or where it is not the person's to see. */
    Optional<RecordSheet> sheet(Person who, long id, String address) {
        if (!who.may(Operation.SEE_HANDOFF_RECORD)) return Optional.empty();
        return publications
                .inWork()
                .flatMap(folder -> records.find(who, id)
                        .flatMap(act -> desk.paper(who, id).map(paper -> {
                            ZoneId zone = zone(folder, act);
                            return RecordPaperPresenter.sheet(
                                    new Speech(who.reading()),
                                    paper,
                                    beside(who, folder, act, zone),
                                    clock.instant(),
                                    zone,
                                    "%s/record/%d".formatted(address, id));
                        })));
    }

    private ZoneId zone(FolderId folder, HandoffAct act) {
        return facts.sites().of(folder).stream()
                .filter(site -> site.id().equals(act.site()))
                .map(site -> site.zone())
                .findFirst()
                .orElse(ZoneOffset.UTC);
    }

    /** An act of an earlier folder is told in its own words only: openings of the same name may be others by now. */
    private Beside beside(Person who, FolderId folder, HandoffAct act, ZoneId zone) {
        if (desk.shelf(who).acts().stream().noneMatch(one -> one.id() == act.id()))
            return new Beside(Map.of(), List.of(), List.of(), "");
        var shown = shown(who, folder, act);
        var printed = shown.stream().limit(MOST_PHOTOS).toList();
        var say = new Speech(who.reading());
        List<RecordSheet.Photo> pictures = new ArrayList<>();
        printed.forEach(photo -> picture(who, say, photo, act, zone).ifPresent(pictures::add));
        return new Beside(
                then(who, folder, act), holds(say, folder, act), pictures, left(say, shown.size(), pictures.size()));
    }

    private Map<OpeningId, OpeningState> then(Person who, FolderId folder, HandoffAct act) {
        Map<OpeningId, OpeningState> then = new LinkedHashMap<>();
        for (var entry : act.entries()) {
            try {
                then.put(entry.opening(), facts.states().asOf(who, folder, entry.opening(), entry.lastMark()));
            } catch (NotAllowed gone) {
                // the folder in work no longer has it; the record's own words still name it
                continue;
            }
        }
        return then;
    }

    private List<String> holds(Speech say, FolderId folder, HandoffAct act) {
        return facts.holdPoints().at(folder, act.site()).stream()
                .sorted()
                .map(point -> say.it("{0} (applies at this site)", Saying.of(point.words())))
                .toList();
    }

    /** Those given with the act first, then what else was taken at its openings, the newest first. */
    private List<Photo> shown(Person who, FolderId folder, HandoffAct act) {
        if (!who.may(Operation.SEE_PHOTO)) return List.of();
        Comparator<Photo> given = Comparator.comparing(photo -> !act.photos().contains(photo.id()));
        return photos
                .of(
                        who,
                        folder,
                        act.entries().stream().map(HandoffAct.Entry::opening).toList())
                .stream()
                .sorted(given.thenComparing(Photo::takenAt, Comparator.reverseOrder()))
                .toList();
    }

    private Optional<RecordSheet.Photo> picture(Person who, Speech say, Photo photo, HandoffAct act, ZoneId zone) {
        return photo.looked()
                .flatMap(looked -> photos.thumbnail(who, photo.id())
                        .map(small -> new RecordSheet.Photo(
                                small.bytes(), looked.widthPx(), looked.heightPx(), said(say, photo, act, zone))));
    }

    private static String said(Speech say, Photo photo, HandoffAct act, ZoneId zone) {
        String moment = say.moment(photo.takenAt(), zone);
        return act.photos().contains(photo.id())
                ? say.it("{0}, by {1}, {2}, given with this record", photo.opening(), photo.person(), moment)
                : say.it("{0}, by {1}, {2}", photo.opening(), photo.person(), moment);
    }

    private static String left(Speech say, int all, int printed) {
        return all == printed
                ? ""
                : say.it("{0} of {1} photos are printed; the others are kept in Drylap.", printed, all);
    }
}
