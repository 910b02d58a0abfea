package drylap.progress;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.DbTest;
import drylap.assembly.WorkLine;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolders;
import drylap.progress.MarkResult.Marked;
import drylap.security.Operation;
import drylap.security.Person;
import java.time.Instant;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

/** Marks and undoings at random; what must be done is kept in a plain set beside them. */
@DbTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RandomLogDbTests {
    private static final int ACTIONS = 60;

    @Autowired
    JobFolders folders;

    @Autowired
    StepLog log;

    @Autowired
    OpeningStates states;

    FolderId folder = new FolderId(0);

    @BeforeAll
    void store_the_folder() {
        folder = folders.save("wall", WallOfAll.folder());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23})
    void the_replay_is_what_was_accepted_and_nothing_else(int number) {
        var random = new Random(number);
        var opening = new OpeningId("north-" + number);
        var lines = states.of(WallOfAll.SCHEDULER, folder, opening).list().lines();
        Set<String> expected = new HashSet<>();
        int accepted = 0;
        for (int i = 0; i < ACTIONS; i++) {
            var line = lines.get(random.nextInt(Math.min(lines.size(), expected.size() + 3)));
            boolean undo = random.nextInt(4) == 0;
            var result = undo ? undo(opening, line) : mark(opening, line);
            if (!(result instanceof Marked)) continue;
            accepted++;
            if (undo) expected.remove(line.code());
            else expected.add(line.code());
        }

        var state = states.of(WallOfAll.SCHEDULER, folder, opening);
        assertThat(accepted).isGreaterThan(5);
        assertThat(state.done()).isEqualTo(expected);
        assertThat(state.built()).isEqualTo(state.list().built(expected));
        assertThat(states.states(folder))
                .filteredOn(other -> other.opening().id().equals(opening))
                .singleElement()
                .returns(state.done(), OpeningState::done)
                .returns(state.version(), OpeningState::version);
    }

    private MarkResult mark(OpeningId opening, WorkLine line) {
        var key = UUID.randomUUID();
        return line.release()
                ? log.release(WallOfAll.WINDOW, folder, opening, Instant.EPOCH, key)
                : log.mark(who(line), MarkRequest.done(key, folder, opening, line.code(), Instant.EPOCH));
    }

    private MarkResult undo(OpeningId opening, WorkLine line) {
        var key = UUID.randomUUID();
        return line.release()
                ? log.takeBack(WallOfAll.WRAP, Operation.RETURN, folder, opening, line.code(), "torn", key)
                : log.undo(who(line), folder, opening, line.code(), "torn", key);
    }

    private static Person who(WorkLine line) {
        return switch (line.trade()) {
            case WINDOW -> WallOfAll.WINDOW;
            case TESTER -> WallOfAll.TESTER;
            case WRAP -> WallOfAll.WRAP;
            case SIDING -> WallOfAll.SIDING;
        };
    }
}
