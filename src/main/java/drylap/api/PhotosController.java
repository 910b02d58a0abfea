package drylap.api;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.progress.PhotoRequest;
import drylap.progress.PhotoResult;
import drylap.progress.Photos;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.SignedIn;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiFunction;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;
import tools.jackson.databind.node.JsonNodeFactory;

/** Takes photos from devices, and gives them to those whose site it is. */
@RestController
@RequestMapping("/api/photos")
final class PhotosController {
    private final Photos photos;
    private final SignedIn signedIn;

    PhotosController(Photos photos, SignedIn signedIn) {
        this.photos = photos;
        this.signedIn = signedIn;
    }

    /** A photo that is here. */
    record PhotoAnswer(UUID id, String outcome) {}

    @PostMapping(consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    ResponseEntity<PhotoAnswer> add(@RequestParam Map<String, String> form, @RequestParam("file") MultipartFile file)
            throws IOException {
        var who = signedIn.person();
        return switch (photos.add(who, request(form, file.getBytes()))) {
            case PhotoResult.Stored stored ->
                ResponseEntity.status(HttpStatus.CREATED)
                        .body(new PhotoAnswer(stored.photo().id(), "stored"));
            case PhotoResult.AlreadyStored already ->
                ResponseEntity.ok(new PhotoAnswer(already.photo().id(), "already"));
            case PhotoResult.Refused refused -> throw new PhotoRefused(refused);
        };
    }

    /** Not there, not one's own, and no photo number at all are answered alike. */
    @GetMapping("/{id}")
    ResponseEntity<byte[]> content(@PathVariable String id) {
        return answer(id, photos::content);
    }

    /** A small upright copy; whose photo is hidden, theirs is too. */
    @GetMapping("/{id}/thumbnail")
    ResponseEntity<byte[]> thumbnail(@PathVariable String id) {
        return answer(id, photos::thumbnail);
    }

    /** Whatever a browser may take the bytes for, it runs nothing of them and shows them to no other site's page. */
    private ResponseEntity<byte[]> answer(String id, BiFunction<Person, UUID, Optional<Photos.Content>> ask) {
        return found(id, ask)
                .map(content -> ResponseEntity.ok()
                        .contentType(MediaType.parseMediaType(content.type().code()))
                        .cacheControl(CacheControl.empty().cachePrivate())
                        .header("X-Content-Type-Options", "nosniff")
                        .header("Content-Disposition", "inline; filename=\"%s\"".formatted(name(content)))
                        .header("Content-Security-Policy", "default-src 'none'; sandbox")
                        .header("Cross-Origin-Resource-Policy", "same-origin")
                        .body(content.bytes()))
                .orElseThrow(NotFound::new);
    }

    /** Made by us: what the sender called it is not kept. */
    private static String name(Photos.Content content) {
        return "photo-%s.%s"
                .formatted(content.photo().id(), content.type().code().replaceFirst(".*/", ""));
    }

    private Optional<Photos.Content> found(String id, BiFunction<Person, UUID, Optional<Photos.Content>> ask) {
        var who = signedIn.person();
        try {
            return ask.apply(who, UUID.fromString(id));
        } catch (NotAllowed | IllegalArgumentException none) {
            return Optional.empty();
        }
    }

    private static PhotoRequest request(Map<String, String> form, byte[] content) {
        List<BadField> bad = new ArrayList<>();
        var object = JsonNodeFactory.instance.objectNode();
        form.forEach(object::put);
        String folder = form.getOrDefault("folder", "");
        if (folder.matches("\\d{1,18}")) object.put("folder", Long.parseLong(folder));
        var fields = new Fields(object, "photo", bad);
        var request = new PhotoRequest(
                fields.key("key"),
                new FolderId(fields.folder("folder")),
                new OpeningId(fields.id("opening")),
                fields.instant("takenAt"),
                content);
        if (!bad.isEmpty()) throw new BadFields(bad);
        return request;
    }
}
