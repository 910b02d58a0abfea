package drylap.api.v1;

import com.fasterxml.jackson.annotation.JsonInclude;
import drylap.api.NotFound;
import drylap.handoff.HandoffAct;
import drylap.handoff.HandoffRecords;
import drylap.security.SignedIn;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The records of hand-over: releases, acceptances, returns, hold points and water tests. They never change. */
@RestController
final class ActsOfPrograms {
    private final FolderDoor door;
    private final HandoffRecords records;
    private final SignedIn signedIn;

    ActsOfPrograms(FolderDoor door, HandoffRecords records, SignedIn signedIn) {
        this.door = door;
        this.records = records;
        this.signedIn = signedIn;
    }

    /** @param reason the code of why openings were returned, where they were */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record ActAnswer(
            long act,
            String kind,
            String site,
            Instant at,
            String by,
            @Nullable String crew,
            @Nullable String holdPoint,
            @Nullable String reason,
            String note,
            List<Entry> openings) {
        /** How an opening stood then. */
        record Entry(String opening, String rating, String words) {}

        static ActAnswer of(HandoffAct act) {
            return new ActAnswer(
                    act.id(),
                    act.kind().code(),
                    act.site().value(),
                    act.at(),
                    act.who().name(),
                    act.who().crew(),
                    act.holdPoint() == null ? null : act.holdPoint().code(),
                    act.reason() == null ? null : act.reason().code(),
                    act.note(),
                    act.entries().stream()
                            .map(one -> new Entry(one.opening().value(), one.rating(), one.state()))
                            .toList());
        }
    }

    @GetMapping("/api/v1/folders/{folder}/acts")
    ResponseEntity<Listing<ActAnswer>> acts(
            @PathVariable String folder,
            @RequestParam(required = false) @Nullable String limit,
            @RequestParam(required = false) @Nullable String cursor) {
        var who = signedIn.person();
        var id = door.open(who, folder);
        return Part.of(limit, cursor)
                .of(records.of(who, id, Integer.MAX_VALUE), one -> "%019d".formatted(one.id()), ActAnswer::of);
    }

    @GetMapping("/api/v1/acts/{act}")
    ResponseEntity<ActAnswer> act(@PathVariable String act) {
        if (!act.matches("\\d{1,18}")) throw new NotFound();
        return records.find(signedIn.person(), Long.parseLong(act))
                .map(ActAnswer::of)
                .map(Tags::answer)
                .orElseThrow(NotFound::new);
    }
}
