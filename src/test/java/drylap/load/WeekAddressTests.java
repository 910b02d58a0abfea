package drylap.load;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.planning.JobFolders;
import drylap.security.TestPeople;
import drylap.ui.PageTest;
import drylap.ui.QuayFolder;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Where an open week sheet fetches its week. */
@PageTest
class WeekAddressTests {
    @LocalServerPort
    private int port;

    @Autowired
    private JobFolders folders;

    @Autowired
    private TestPeople people;

    @BeforeEach
    void a_folder_is_there() {
        folders.save("week address", new QuayFolder().folder());
    }

    private Browser scheduler(HttpClient http) throws IOException, InterruptedException {
        var browser = new Browser(http, URI.create("http://localhost:" + port));
        browser.signIn(people.scheduler().signInName(), TestPeople.PASSWORD);
        return browser;
    }

    @Test
    void the_address_in_the_page_answers_its_own_session_and_no_other() throws Exception {
        try (var http = HttpClient.newHttpClient()) {
            Browser own = scheduler(http);
            String address =
                    OpenPage.week(OpenPage.at(own, "week-sheet", "").shown()).orElseThrow();

            Browser.Answer plain = own.get(address).good();
            assertThat(plain.json().path("crews").size()).isPositive();
            assertThat(own.packed(address).good().body()).isNotEqualTo(plain.body());

            Browser other = scheduler(http);
            assertThat(other.get(address).body()).doesNotContain("\"crews\"");
            assertThat(new Browser(http, URI.create("http://localhost:" + port))
                            .get(address)
                            .body())
                    .doesNotContain("\"crews\"");
        }
    }
}
