package drylap.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import drylap.DbTest;
import drylap.calendars.CalendarLinks;
import drylap.calendars.CrewCalendars;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.planning.JobFolders;
import drylap.progress.WallOfAll;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;

/** What a device gets that follows a calendar. */
@DbTest
class CalendarDbTests {
    @Autowired
    JobFolders folders;

    @Autowired
    CalendarLinks links;

    @Autowired
    CrewCalendars calendars;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void store_a_folder() {
        folder = folders.save("calendar", WallOfAll.folder());
    }

    @Test
    void a_calendar_is_sent_once_and_then_only_when_it_changed_and_nobody_else_keeps_it() throws Exception {
        String path = links.make(WallOfAll.SCHEDULER, folder, new CrewId("tester-crew"))
                .path();

        var sent = ask(path, null);

        assertThat(sent.getStatus()).isEqualTo(200);
        assertThat(sent.getContentType()).isEqualToIgnoringCase("text/calendar;charset=UTF-8");
        assertThat(sent.getHeader("Cache-Control")).contains("private", "no-cache");
        assertThat(sent.getHeader("Last-Modified")).isNotNull();
        assertThat(sent.getContentAsString()).startsWith("BEGIN:VCALENDAR\r\n");
        var again = ask(path, Objects.requireNonNull(sent.getHeader("ETag")));
        assertThat(again.getStatus()).isEqualTo(304);
        assertThat(again.getContentAsByteArray()).isEmpty();
    }

    @Test
    void an_unknown_and_a_revoked_link_are_answered_alike() throws Exception {
        var made = links.make(WallOfAll.SCHEDULER, folder, new CrewId("tester-crew"));
        links.revoke(WallOfAll.SCHEDULER, made.link().id());

        var revoked = ask(made.path(), null);
        var unknown = ask("/calendar/nothing.ics", null);

        assertThat(revoked.getStatus()).isEqualTo(404);
        assertThat(unknown.getStatus()).isEqualTo(404);
        assertThat(revoked.getContentAsString().replace(made.secret(), "nothing"))
                .isEqualTo(unknown.getContentAsString());
    }

    private MockHttpServletResponse ask(String path, @org.jspecify.annotations.Nullable String tag) throws Exception {
        var request = get(path);
        if (tag != null) request.header("If-None-Match", tag);
        return MockMvcBuilders.standaloneSetup(new CalendarController(calendars))
                .setControllerAdvice(new Problems(() -> java.util.Optional.empty()))
                .build()
                .perform(request)
                .andReturn()
                .getResponse();
    }
}
