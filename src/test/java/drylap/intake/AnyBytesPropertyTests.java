package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Whatever bytes a folder holds, the reader answers; it never throws. */
class AnyBytesPropertyTests {
    private static final byte[] SPITEFUL = {'"', ',', '\n', '\r', 0, (byte) 0xFF, '-', '9', 'e', ';', ' ', '='};

    @Property(tries = 1000)
    void a_spoilt_folder_is_read_or_refused_with_reasons(@ForAll long seed) {
        Random random = new Random(seed);
        SmallFolder small = new SmallFolder();
        String file = List.copyOf(small.files().keySet())
                .get(random.nextInt(small.files().size()));
        byte[] bytes = small.bytes(file).clone();
        for (int i = 0; i < 1 + random.nextInt(6); i++)
            bytes[random.nextInt(bytes.length)] = SPITEFUL[random.nextInt(SPITEFUL.length)];
        assertThat(small.bytes(file, bytes).read())
                .satisfiesAnyOf(
                        read -> assertThat(read).isInstanceOf(FolderReading.Read.class),
                        refused -> assertThat(((FolderReading.Refused) refused).problems())
                                .isNotEmpty());
    }

    @Property(tries = 200)
    void pure_noise_in_every_file_is_refused(@ForAll byte[] noise) {
        SmallFolder small = new SmallFolder();
        small.files().replaceAll((_, _) -> noise);
        assertThat(small.read()).isInstanceOf(FolderReading.Refused.class);
    }
}
