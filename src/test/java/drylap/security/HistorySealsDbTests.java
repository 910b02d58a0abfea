package drylap.security;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.platform.TestDatabase;
import drylap.security.HistorySeals.Head;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.postgresql.ds.PGSimpleDataSource;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.jdbc.datasource.TransactionAwareDataSourceProxy;
import org.springframework.transaction.support.TransactionTemplate;

/** Each test has a database to itself, which it changes behind the application's back as an administrator of the database could. */
class HistorySealsDbTests {
    private static final Person SOMEBODY =
            new Person(new PersonId(7), "scheduler", "Test scheduler", Role.SCHEDULER, Reach.EVERYWHERE, null, false);

    private DSLContext db;
    private History history;
    private HistorySeals seals;

    @BeforeEach
    void four_lines_sealed_in_two_goes() {
        var source = new PGSimpleDataSource();
        source.setUrl(TestDatabase.fresh());
        source.setUser("postgres");
        db = DSL.using(new TransactionAwareDataSourceProxy(source), SQLDialect.POSTGRES);
        history = new History(db, Clock.systemUTC());
        seals = new HistorySeals(db, new TransactionTemplate(new DataSourceTransactionManager(source)));
        note("published plan 1", new SiteId("quay"));
        note("changed \"weight_travel\" from 2 to 3", null);
        seals.run();
        note("added Ana Núñez", null);
        note("published plan 2", new SiteId("quay"));
        seals.run();
    }

    private void note(String what, @Nullable SiteId site) {
        history.note(SOMEBODY, site, what);
    }

    private SealCheck.Result check() {
        return SealCheck.of(db, Optional.empty());
    }

    private void behindItsBack(String sql) {
        db.execute("begin; set local session_replication_role = replica; " + sql + "; commit");
    }

    @Test
    void what_nobody_touched_is_as_it_was_sealed() {
        note("published plan 3", null);

        var result = check();

        assertThat(result.faults()).isEmpty();
        assertThat(result.sealed()).isEqualTo(4);
        assertThat(result.unsealed()).isEqualTo(1);
        assertThat(result.head()).isEqualTo(seals.head());
    }

    @Test
    void an_empty_history_has_no_head() {
        behindItsBack("delete from history_seal; delete from change_log");
        seals.run();
        assertThat(check()).isEqualTo(new SealCheck.Result(0, Optional.empty(), 0, 0, List.of()));
    }

    /** The same digests by PostgreSQL's own sha256. */
    @Test
    void postgresql_reckons_the_same_chain() {
        db.execute("""
                create function part(t text) returns bytea immutable language sql as
                $$ select int4send(octet_length(convert_to(t, 'UTF8'))) || convert_to(t, 'UTF8') $$""");
        var chain = db.fetch("""
                with recursive chain(seq, seal) as (
                    select 0::bigint, repeat('0', 64)
                    union all
                    select s.seq, encode(sha256(part(chain.seal) || part(s.seq::text) || part(c.id::text)
                        || part((extract(epoch from c.at) * 1000000)::bigint::text)
                        || part(coalesce(c.person_id::text, '')) || part(coalesce(c.site, ''))
                        || part(encode(sha256(s.nonce || part(c.person) || part(c.what)), 'hex'))), 'hex')
                    from chain join history_seal s on s.seq = chain.seq + 1 join change_log c on c.id = s.change_id)
                select seal from chain where seq > 0 order by seq""");

        assertThat(chain.getValues(0))
                .isEqualTo(
                        db.fetch("select sha256 from history_seal order by seq").getValues(0))
                .hasSize(4);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            update change_log set what = 'published plan 9' where id = 1 | seal 1: line 1
            update change_log set person = 'Somebody else' where id = 2 | seal 2: line 2
            update change_log set person_id = 8 where id = 2 | seal 2: line 2
            update change_log set site = 'mill' where id = 1 | seal 1: line 1
            update change_log set at = at + interval '1 microsecond' where id = 3 | seal 3: line 3
            delete from change_log where id = 3 | seal 3: line 3 is gone
            delete from change_log where id = 3; delete from history_seal where seq = 3 | seal 3 is gone
            delete from change_log where id = 1; delete from history_seal where seq = 1 | seal 1 is gone
            update history_seal set change_id = 5 where seq = 2 | seal 2: line 5 is gone
            update history_seal set sha256 = repeat('a', 64) where seq = 2 | seal 2: line 2
            update history_seal set nonce = decode(repeat('ab', 16), 'hex') where seq = 2 | seal 2: line 2
            """)
    void what_somebody_changed_is_found(String sql, String fault) {
        behindItsBack(sql);
        assertThat(check().faults()).isNotEmpty().first().asString().startsWith(fault);
    }

    @Test
    void what_was_cut_off_at_the_end_or_sealed_anew_shows_against_a_head_that_was_noted() {
        Head noted = seals.head().orElseThrow();
        behindItsBack("delete from history_seal where seq = 4; delete from change_log where id = 4");
        assertThat(check().faults()).isEmpty();
        assertThat(SealCheck.of(db, Optional.of(noted)).faults())
                .containsExactly("seal 4, which was noted, is not there: the newest is 3");

        behindItsBack("delete from history_seal; update change_log set what = 'slept' where id = 1");
        note("published plan 4", null);
        seals.run();
        assertThat(check().faults()).isEmpty();
        assertThat(SealCheck.of(db, Optional.of(noted)).faults())
                .containsExactly("seal 4 is another than the one that was noted");
    }
}
