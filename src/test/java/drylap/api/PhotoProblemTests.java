package drylap.api;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.progress.PhotoResult.Refused;
import drylap.speech.Saying;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By the status a phone knows whether a photo can be taken later (RFC 6585, 4: 429). */
class PhotoProblemTests {
    @ParameterizedTest
    @CsvSource({"TOO_LARGE,413", "NO_PHOTO,415", "KEY_TAKEN,409", "MANY_TODAY,429"})
    void what_is_wrong_with_a_photo_has_its_status(Refused.Why why, int status) {
        var refused = new PhotoRefused(new Refused(why, Saying.of("the reason in words")));

        var problem = new Problems(Optional::empty).on(refused);

        assertThat(problem.getStatus()).isEqualTo(status);
        assertThat(problem.getDetail()).isEqualTo("the reason in words");
    }
}
