package drylap.api.v1;

import drylap.api.BadField;
import java.util.List;
import org.springframework.http.HttpStatus;

/** A change that cannot be; nothing of it was done. */
final class Refused extends RuntimeException {
    private final HttpStatus status;
    private final transient List<BadField> errors;

    private Refused(HttpStatus status, String words, List<BadField> errors) {
        super(words);
        this.status = status;
        this.errors = List.copyOf(errors);
    }

    /** It names no version of what it is to change (RFC 6585, 3). */
    static Refused unnamed(String words) {
        return new Refused(HttpStatus.PRECONDITION_REQUIRED, words, List.of());
    }

    static Refused changed() {
        return stale("it was changed since you read it; read it again and decide anew");
    }

    static Refused stale(String words) {
        return new Refused(HttpStatus.PRECONDITION_FAILED, words, List.of());
    }

    /** The wall is not so that it could be. */
    static Refused conflict(String words, List<BadField> errors) {
        return new Refused(HttpStatus.CONFLICT, words, errors);
    }

    /** It could be read, and is never accepted so. */
    static Refused content(String words, List<BadField> errors) {
        return new Refused(HttpStatus.UNPROCESSABLE_CONTENT, words, errors);
    }

    static Refused mediaType(String words) {
        return new Refused(HttpStatus.UNSUPPORTED_MEDIA_TYPE, words, List.of());
    }

    HttpStatus status() {
        return status;
    }

    List<BadField> errors() {
        return errors;
    }
}
