package drylap.planning;

import static drylap.persistence.jooq.Tables.CHANGE_LOG;
import static drylap.persistence.jooq.Tables.RULE_CHANGE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import drylap.DbTest;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.SiteId;
import drylap.planning.RuleChangeResult.Changed;
import drylap.planning.RuleChangeResult.ChangedMeanwhile;
import drylap.planning.RuleChangeResult.Refused;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.progress.OpeningStates;
import drylap.progress.RulesOfSite;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;

@DbTest
class ChangedRulesDbTests {
    private static final SiteId ONE = new SiteId("S1");
    private static final SiteId TWO = new SiteId("S2");

    @Autowired
    ChangedRules rules;

    @Autowired
    JobFolders folders;

    @Autowired
    CurrentFolders current;

    @Autowired
    RulesOfSite ofSite;

    @Autowired
    OpeningStates states;

    @Autowired
    TestPeople people;

    @Autowired
    News news;

    @Autowired
    DSLContext db;

    private FolderId folder = new FolderId(0);
    private RuleBook imported = RuleBook.STANDARD;

    @BeforeEach
    void store() {
        var job = JobFixture.job(200, 1);
        assertThat(job.sites()).hasSizeGreaterThan(1);
        imported = job.rules().with(null, Rule.DRYING_H, 5).with(ONE, Rule.SKIN_MIN, 45);
        folder = folders.save("rules", job.withRules(imported));
    }

    private Person scheduler() {
        return people.scheduler();
    }

    private static RuleRequest request(@Nullable SiteId site, Rule rule, @Nullable Double value, long seen) {
        return new RuleRequest(site, rule, value, "the maker says so", seen);
    }

    private long changed(Person who, @Nullable SiteId site, Rule rule, @Nullable Double value, long seen) {
        return ((Changed) rules.change(who, folder, request(site, rule, value, seen)))
                .change()
                .id();
    }

    @Test
    void rules_of_a_site_are_stored_with_the_folder() {
        assertThat(folders.load(folder).rules()).isEqualTo(imported);
    }

    @Test
    void a_change_lies_over_the_import_at_its_site_only_and_goes_back_to_it() {
        var who = scheduler();
        long first = changed(who, ONE, Rule.DRYING_H, 9.0, 0);

        assertThat(current.load(folder).rules()).isEqualTo(imported.with(ONE, Rule.DRYING_H, 9));
        assertThat(folders.load(folder).rules()).isEqualTo(imported);
        assertThat(ofSite.of(folder, ONE).value(Rule.DRYING_H)).isEqualTo(9);
        assertThat(ofSite.of(folder, TWO).value(Rule.DRYING_H)).isEqualTo(5);

        changed(who, ONE, Rule.DRYING_H, null, first);
        assertThat(current.load(folder).rules()).isEqualTo(imported);
    }

    @Test
    void who_saw_an_older_value_is_given_the_newer_and_changes_nothing() {
        changed(scheduler(), ONE, Rule.SKIN_MIN, 60.0, 0);

        assertThat(rules.change(scheduler(), folder, request(ONE, Rule.SKIN_MIN, 15.0, 0)))
                .isInstanceOfSatisfying(
                        ChangedMeanwhile.class,
                        meanwhile -> assertThat(meanwhile.newer().value()).isEqualTo(60));
        assertThat(ofSite.of(folder, ONE).value(Rule.SKIN_MIN)).isEqualTo(60);
        // another rule and another place are not in the way
        changed(scheduler(), TWO, Rule.SKIN_MIN, 15.0, 0);
        changed(scheduler(), null, Rule.SKIN_MIN, 20.0, 0);
    }

    @Test
    void of_two_at_once_one_is_told_of_the_other() throws Exception {
        var barrier = new CyclicBarrier(2);
        var one = scheduler();
        try (var threads = Executors.newFixedThreadPool(2)) {
            Callable<RuleChangeResult> change = () -> {
                barrier.await();
                return rules.change(one, folder, request(ONE, Rule.RAIN_P, 0.5, 0));
            };
            var results = threads.invokeAll(List.of(change, change)).stream()
                    .map(result -> result.resultNow().getClass().getSimpleName())
                    .toList();
            assertThat(results).containsExactlyInAnyOrder("Changed", "ChangedMeanwhile");
        }
    }

    @Test
    void a_value_out_of_bounds_is_refused_with_the_bounds() {
        var who = scheduler();
        refused(who, request(ONE, Rule.DRYING_H, 73.0, 0), "73 was put in; accepted is a number from 0 to 72 h");
        refused(who, request(null, Rule.WEIGHT_TRAVEL, 1.5, 0), "accepted is a whole number from 0 to 1000000");
        refused(who, request(ONE, Rule.DRYING_H, Double.NaN, 0), "NaN was put in");
        refused(who, request(ONE, Rule.WEIGHT_TRAVEL, 2.0, 0), "counts for the whole plan");
        refused(who, request(new SiteId("none"), Rule.DRYING_H, 2.0, 0), "no site none");
        refused(who, new RuleRequest(ONE, Rule.DRYING_H, 2.0, " ", 0), "say why");
        assertThat(db.fetchCount(RULE_CHANGE, RULE_CHANGE.FOLDER_ID.eq(folder.value())))
                .isZero();
    }

    private void refused(Person who, RuleRequest request, String why) {
        assertThat(rules.change(who, folder, request))
                .isInstanceOfSatisfying(
                        Refused.class, no -> assertThat(no.why().words()).contains(why));
    }

    @Test
    void a_rule_is_changed_where_it_is_in_reach_only_and_seen_there_only() {
        var ofOne = people.add(Role.SCHEDULER, Reach.of(List.of(ONE)), null);
        changed(scheduler(), TWO, Rule.DRYING_H, 9.0, 0);
        changed(ofOne, ONE, Rule.DRYING_H, 8.0, 0);

        denied(() -> rules.change(ofOne, folder, request(TWO, Rule.SKIN_MIN, 9.0, 0)));
        denied(() -> rules.change(ofOne, folder, request(null, Rule.SKIN_MIN, 9.0, 0)));
        assertThat(rules.newest(ofOne, folder)).extracting(RuleChange::site).containsExactly(ONE);
        assertThat(rules.of(ofOne, folder).ofSites()).containsOnlyKeys(ONE);
        assertThat(current.load(ofOne, folder).rules().ofSites()).containsOnlyKeys(ONE);

        var crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "window-1");
        denied(() -> rules.change(crew, folder, request(ONE, Rule.SKIN_MIN, 9.0, 0)));
        denied(() -> rules.newest(crew, folder));
        denied(() -> rules.of(crew, folder));
        var elsewhere = people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("another"))), null);
        denied(() -> rules.of(elsewhere, folder));
    }

    private static void denied(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(call);
    }

    @Test
    void a_change_is_history_and_news_and_is_never_rewritten() {
        var who = scheduler();
        List<NewsItem> heard = new CopyOnWriteArrayList<>();
        try (var _ = news.listen(heard::add)) {
            changed(who, ONE, Rule.DRYING_H, 9.0, 0);
            await().untilAsserted(
                            () -> assertThat(heard).contains(new NewsItem("rule", folder.value(), "S1", "drying_h")));
        }
        assertThat(db.fetchValues(
                        CHANGE_LOG.WHAT, CHANGE_LOG.PERSON_ID.eq(who.id().value())))
                .containsExactly("rule drying_h set to 9: the maker says so");
        assertThatThrownBy(() -> db.update(RULE_CHANGE)
                        .set(RULE_CHANGE.VALUE, 1.0)
                        .where(RULE_CHANGE.FOLDER_ID.eq(folder.value()))
                        .execute())
                .isInstanceOf(DataAccessException.class)
                .hasMessageContaining("only grow");
    }
}
