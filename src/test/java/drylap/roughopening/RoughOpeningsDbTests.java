package drylap.roughopening;

import static drylap.persistence.jooq.Tables.JOB_FOLDER;
import static drylap.persistence.jooq.Tables.ROUGH_MEASUREMENT;
import static drylap.persistence.jooq.Tables.ROUGH_SIZE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatException;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drylap.DbTest;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.roughopening.RoughResult.Recorded;
import drylap.roughopening.RoughResult.Refused;
import drylap.roughopening.RoughVerdict.Grade;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@DbTest
class RoughOpeningsDbTests {
    private static final OpeningId ONE = new OpeningId("QW2-01");

    @Autowired
    JobFolders folders;

    @Autowired
    RoughOpenings rough;

    @Autowired
    TestPeople people;

    @Autowired
    DSLContext db;

    FolderId folder = new FolderId(0);

    @BeforeEach
    void store_the_folder() {
        folder = folders.save("quay", new QuayFolder().folder());
    }

    private Person crew(String site) {
        return people.add(Role.WINDOW_CREW, Reach.of(Set.of(new SiteId(site))), "W1");
    }

    /** Of 900 by 1,200 mm as designed, square but for the width at the head; diagonals of 1,500 mm (3-4-5). */
    private static RoughSizes sizes(String head) {
        Map<RoughPlace, BigDecimal> sizes = new EnumMap<>(RoughPlace.class);
        for (RoughPlace place : RoughPlace.values()) sizes.put(place, BigDecimal.ZERO);
        for (RoughPlace place : RoughPlace.values())
            if (place.code().startsWith("width")) sizes.put(place, BigDecimal.valueOf(900));
            else if (place.code().startsWith("height")) sizes.put(place, BigDecimal.valueOf(1_200));
            else if (place.code().startsWith("diagonal")) sizes.put(place, BigDecimal.valueOf(1_500));
        sizes.put(RoughPlace.WIDTH_HEAD, new BigDecimal(head));
        return new RoughSizes(sizes);
    }

    @Test
    void a_measurement_comes_back_exactly_with_who_and_what_it_comes_to() {
        Person who = crew("Q");
        // 35 25/64 inches, in which a 64th has six decimals of a millimetre
        var result = rough.record(who, folder, ONE, UUID.randomUUID(), sizes("898.921875"), "dry");
        assertThat(result).isInstanceOf(Recorded.class);
        assertThat(rough.newest(who, folder, ONE)).hasValueSatisfying(one -> {
            assertThat(one.sizes().millimetres().get(RoughPlace.WIDTH_HEAD)).isEqualByComparingTo("898.921875");
            assertThat(one.person()).isEqualTo(who.name());
            assertThat(one.note()).isEqualTo("dry");
            assertThat(one.verdict().grade()).isEqualTo(Grade.FITS);
        });
    }

    @Test
    void the_newest_counts_and_the_others_stay() {
        Person who = crew("Q");
        rough.record(who, folder, ONE, UUID.randomUUID(), sizes("885"), "");
        assertThat(rough.newest(who, folder, ONE).orElseThrow().verdict().grade())
                .isEqualTo(Grade.REPORT);
        rough.record(who, folder, ONE, UUID.randomUUID(), sizes("900"), "planed");
        assertThat(rough.of(who, folder, ONE))
                .extracting(one -> one.verdict().grade())
                .containsExactly(Grade.FITS, Grade.REPORT);
    }

    @Test
    void a_form_that_is_sent_twice_is_recorded_once() {
        Person who = crew("Q");
        UUID key = UUID.randomUUID();
        rough.record(who, folder, ONE, key, sizes("900"), "");
        assertThat(rough.record(who, folder, ONE, key, sizes("885"), "")).isInstanceOf(Recorded.class);
        assertThat(rough.of(who, folder, ONE)).hasSize(1);
        assertThat(rough.record(who, folder, new OpeningId("QW1-01"), key, sizes("900"), ""))
                .isInstanceOf(Refused.class);
    }

    @Test
    void a_slip_of_the_tape_is_refused_and_nothing_is_kept() {
        Person who = crew("Q");
        var slip = rough.record(who, folder, ONE, UUID.randomUUID(), sizes("1900"), "");
        assertThat(((Refused) slip).why().words()).contains("measure or type one of them again");
        assertThat(rough.of(who, folder, ONE)).isEmpty();
    }

    @Test
    void only_who_sets_windows_at_the_site_measures_and_only_its_people_see_it() {
        Person follows = people.add(Role.FOLLOW_ON, Reach.of(Set.of(new SiteId("Q"))), "P1");
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> rough.record(follows, folder, ONE, UUID.randomUUID(), sizes("900"), ""));
        assertThat(rough.of(follows, folder, ONE)).isEmpty();
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> rough.of(crew("M"), folder, ONE));
    }

    @Test
    void what_was_measured_is_neither_changed_nor_taken_away() {
        rough.record(crew("Q"), folder, ONE, UUID.randomUUID(), sizes("900"), "");
        assertThatException()
                .isThrownBy(() -> db.update(ROUGH_MEASUREMENT)
                        .set(ROUGH_MEASUREMENT.NOTE, "other")
                        .where(ROUGH_MEASUREMENT.FOLDER_ID.eq(folder.value()))
                        .execute())
                .withStackTraceContaining("only grow");
    }

    @Test
    void a_folder_goes_with_its_measurements() {
        rough.record(crew("Q"), folder, ONE, UUID.randomUUID(), sizes("900"), "");
        db.deleteFrom(JOB_FOLDER).where(JOB_FOLDER.ID.eq(folder.value())).execute();
        assertThat(db.fetchCount(ROUGH_MEASUREMENT, ROUGH_MEASUREMENT.FOLDER_ID.eq(folder.value())))
                .isZero();
    }

    @Test
    void no_size_is_taken_away() {
        rough.record(crew("Q"), folder, ONE, UUID.randomUUID(), sizes("900"), "");
        assertThatException()
                .isThrownBy(() -> db.deleteFrom(ROUGH_SIZE).execute())
                .withStackTraceContaining("only grow");
    }
}
