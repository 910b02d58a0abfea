package drylap.ui.followon;

import drylap.handoff.HandoffResult;
import drylap.handoff.ReturnReason;
import drylap.handoff.Takeovers;
import drylap.kernel.FolderId;
import drylap.progress.PhotoRequest;
import drylap.progress.PhotoResult;
import drylap.progress.Photos;
import drylap.security.Person;
import drylap.speech.Saying;
import drylap.speech.Unfit;
import drylap.ui.drawn.ApronSheet;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Takes in what a person says when they return an opening. */
@Service
final class ReturnCounter {
    private final Takeovers takeovers;
    private final Photos photos;
    private final Clock clock;

    ReturnCounter(Takeovers takeovers, Photos photos, Clock clock) {
        this.takeovers = takeovers;
        this.photos = photos;
        this.clock = clock;
    }

    /** What a person says; the key is the same however often the button is pressed. */
    record Said(UUID key, ReturnReason reason, @Nullable String redoFrom, String note, List<Picture> pictures) {}

    /** A photo as it came from the device. */
    record Picture(UUID id, String name, byte[] content) {}

    /**
     * @throws IllegalArgumentException where a photo is none, or a text is missing: in words for the person
     */
    HandoffResult giveBack(Person who, FolderId folder, ApronSheet sheet, Said said) {
        said.pictures()
                .forEach(picture -> keep(who, folder, sheet, picture).ifPresent(refused -> {
                    throw new Unfit(Saying.of("{0}: {1}", picture.name(), refused));
                }));
        var ids = said.pictures().stream().map(Picture::id).toList();
        var request = sheet.seen().request(folder, said.key(), said.note(), ids);
        return takeovers.giveBack(who, request, said.reason(), said.redoFrom());
    }

    private Optional<Saying> keep(Person who, FolderId folder, ApronSheet sheet, Picture picture) {
        var request = new PhotoRequest(picture.id(), folder, sheet.opening(), clock.instant(), picture.content());
        return switch (photos.add(who, request)) {
            case PhotoResult.Stored _, PhotoResult.AlreadyStored _ -> Optional.empty();
            case PhotoResult.Refused refused -> Optional.of(refused.saying());
        };
    }
}
