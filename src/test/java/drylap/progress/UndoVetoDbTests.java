package drylap.progress;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.kernel.FolderId;
import drylap.planning.JobFolders;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.progress.MarkResult.Marked;
import drylap.progress.MarkResult.Refused;
import drylap.speech.Saying;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;

@DbTest
@Import(UndoVetoDbTests.Keeper.class)
class UndoVetoDbTests {
    /** Not a configuration by annotation, so that the other tests' scan of this package passes it by. */
    static class Keeper {
        @Bean
        UndoVeto keepsTheApron() {
            return (_, _, line) ->
                    line.code().equals("APR") ? Optional.of(Saying.of("the apron was accepted")) : Optional.empty();
        }
    }

    @Autowired
    JobFolders folders;

    @Autowired
    StepLog log;

    @Autowired
    News news;

    @Test
    void whoever_knows_a_reason_against_an_undoing_is_heard_and_nothing_is_told_of_it() throws Exception {
        FolderId folder = folders.save("wall", WallOfAll.folder());
        var opening = WallOfAll.plain(Method.B);
        var heard = new LinkedBlockingQueue<NewsItem>();
        try (var _ = news.listen(item -> {
            if (item.isAbout(StepLog.TOPIC)) heard.add(item);
        })) {
            for (String line : new String[] {"RO", "APR"})
                log.mark(WallOfAll.WINDOW, MarkRequest.done(UUID.randomUUID(), folder, opening, line, Instant.EPOCH));
            var refused = log.undo(WallOfAll.WINDOW, folder, opening, "APR", "torn", UUID.randomUUID());
            var undone = log.undo(WallOfAll.WINDOW, folder, opening, "RO", "wet", UUID.randomUUID());

            assertThat(refused).isEqualTo(Refused.because(Saying.of("the apron was accepted")));
            assertThat(undone).isNotInstanceOf(Marked.class);
            var expected = new NewsItem("progress", folder.value(), "north", opening.value());
            assertThat(heard.poll(5, TimeUnit.SECONDS)).isEqualTo(expected);
            assertThat(heard.poll(5, TimeUnit.SECONDS)).isEqualTo(expected);
            assertThat(heard.poll(300, TimeUnit.MILLISECONDS)).isNull();
        }
    }
}
