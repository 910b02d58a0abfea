package drylap.api.v1;

import drylap.api.BadField;
import drylap.api.NotFound;
import drylap.handoff.Custody;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.planning.ScheduleResult;
import drylap.planning.ScheduleTaking;
import drylap.planning.WindowSchedules;
import drylap.progress.OpeningState;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.sites.Facades;
import drylap.sites.Opening;
import drylap.sites.Openings;
import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** Openings are added and changed as a window schedule of one row would. */
@RestController
final class DesignsOfOpenings {
    private static final String FROM = "another program";

    private final FolderDoor folders;
    private final OpeningDoor door;
    private final Openings openings;
    private final Facades facades;
    private final WindowSchedules schedules;
    private final SignedIn signedIn;

    DesignsOfOpenings(
            FolderDoor folders,
            OpeningDoor door,
            Openings openings,
            Facades facades,
            WindowSchedules schedules,
            SignedIn signedIn) {
        this.folders = folders;
        this.door = door;
        this.openings = openings;
        this.facades = facades;
        this.schedules = schedules;
        this.signedIn = signedIn;
    }

    /** {@code If-None-Match: *} adds one that is not there yet, {@code If-Match} changes one that is (RFC 9110, 13.1). */
    @PutMapping("/api/v1/folders/{folder}/openings/{opening}")
    ResponseEntity<OpeningAnswerV1> put(
            @PathVariable String folder,
            @PathVariable String opening,
            @RequestBody JsonNode body,
            HttpServletRequest request) {
        var who = signedIn.person();
        var id = folders.open(who, folder);
        return "*".equals(request.getHeader(HttpHeaders.IF_NONE_MATCH))
                ? add(who, id, OpeningBody.read(body, opening), request)
                : change(door.agreed(who, folder, opening, request), body);
    }

    private ResponseEntity<OpeningAnswerV1> add(
            Person who, FolderId folder, Opening asked, HttpServletRequest request) {
        demandWall(who, folder, asked);
        if (openings.find(folder, asked.id(), who.reach()).isPresent())
            throw Refused.stale("there is an opening of this name; read it, and change it with its ETag");
        take(who, folder, adding(asked), taken(asked));
        var answer = now(who, folder, asked.id());
        return ResponseEntity.created(URI.create(request.getRequestURI()))
                .cacheControl(Tags.CACHE)
                .eTag(Tags.of(answer))
                .body(answer);
    }

    private ResponseEntity<OpeningAnswerV1> change(OpeningDoor.Seen seen, JsonNode body) {
        var was = seen.state().opening();
        seen.who().demand(Operation.IMPORT_FOLDER, was.facade().site());
        var asked = OpeningBody.read(body, was.id().value());
        OpeningBody.demandSame(was, asked);
        if (!was.designedLike(asked)) {
            demandWall(seen.who(), seen.folder(), asked);
            demandUntouched(seen);
            var design = was.designed(
                    asked.facade(), asked.level(), asked.widthMm(), asked.heightMm(), asked.frame(), asked.method());
            take(seen.who(), seen.folder(), changing(was, design), Refused.changed());
        }
        return Tags.answer(now(seen.who(), seen.folder(), seen.id()));
    }

    private static ScheduleTaking adding(Opening asked) {
        return new ScheduleTaking(
                asked.facade().site(), FROM, List.of(asked), List.of(), List.of(), List.of(), Map.of());
    }

    private static ScheduleTaking changing(Opening was, Opening now) {
        return new ScheduleTaking(
                was.facade().site(), FROM, List.of(), List.of(was), List.of(now), List.of(), Map.of());
    }

    /** @param late what is said where somebody else was quicker, at this site or at another */
    private void take(Person who, FolderId folder, ScheduleTaking taking, Refused late) {
        switch (schedules.take(who, folder, taking)) {
            case ScheduleResult.Taken _ -> {}
            case ScheduleResult.Refused(var why) -> throw Refused.content(why.words(), List.of());
            case ScheduleResult.ChangedMeanwhile _ -> throw late;
        }
    }

    private static Refused taken(Opening asked) {
        return Refused.conflict(
                "the name %s is taken in this job folder; accepted: another one".formatted(asked.id()), List.of());
    }

    private void demandWall(Person who, FolderId folder, Opening asked) {
        who.demand(Operation.IMPORT_FOLDER);
        boolean there = facades.within(folder, who.reach()).stream()
                .anyMatch(one -> one.id().equals(asked.facade()));
        if (!there)
            throw Refused.content(
                    "there is no such wall",
                    List.of(new BadField(
                            "opening.facade",
                            "%s is no facade here; accepted: one of the list of facades".formatted(asked.facade()))));
    }

    /** A screen asks whether a change is meant all the same; a program cannot be asked. */
    private static void demandUntouched(OpeningDoor.Seen seen) {
        OpeningState state = seen.state();
        boolean begun = state.lastMark() != null
                || state.opening().done() > 0
                || !state.opening().finished().isEmpty()
                || !seen.answer()
                        .hands()
                        .state()
                        .equals(OpeningAnswerV1.Hands.of(new Custody.Unreleased())
                                .state());
        if (begun)
            throw Refused.conflict(
                    "work has begun at opening %s; change it with a window schedule on the page, which asks back"
                            .formatted(seen.id()),
                    List.of());
    }

    private OpeningAnswerV1 now(Person who, FolderId folder, OpeningId opening) {
        try {
            return door.see(who, String.valueOf(folder.value()), opening.value())
                    .answer();
        } catch (NotFound gone) {
            throw new IllegalStateException("opening %s was just stored".formatted(opening), gone);
        }
    }
}
