package drylap.planning;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.DbTest;
import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.RainRating;
import drylap.assembly.SecondLayer;
import drylap.forecasts.FetchOutcome;
import drylap.forecasts.ForecastSource;
import drylap.handoff.ActKind;
import drylap.handoff.HoldPoint;
import drylap.handoff.LeakDefinition;
import drylap.handoff.ReturnReason;
import drylap.hooks.DeliveryState;
import drylap.kernel.Coded;
import drylap.kernel.Language;
import drylap.kernel.Rule;
import drylap.kernel.Ruler;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.pictures.MediaType;
import drylap.platform.JobStatus;
import drylap.progress.MarkKind;
import drylap.roughopening.RoughPlace;
import drylap.security.Role;
import drylap.sites.Terrain;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.springframework.beans.factory.annotation.Autowired;

/** The tables accept exactly the codes that the program knows: a new code needs a migration, and this says so. */
@DbTest
class CodesDbTests {
    static final Map<String, Coded[]> CODES = Map.ofEntries(
            Map.entry("site_terrain", Terrain.values()),
            Map.entry("opening_frame", Frame.values()),
            Map.entry("opening_method", Method.values()),
            Map.entry("opening_approach", Approach.values()),
            Map.entry("opening_second_layer", SecondLayer.values()),
            Map.entry("crew_trade", Trade.values()),
            Map.entry("crew_methods", Method.values()),
            Map.entry("labour_row_task", Task.values()),
            Map.entry("labour_row_method", Method.values()),
            Map.entry("rule_value_rule", Rule.values()),
            Map.entry("rule_change_rule", Rule.values()),
            Map.entry("published_visit_task", Task.values()),
            Map.entry("visit_task", Task.values()),
            Map.entry("unplanned_task_task", Task.values()),
            Map.entry("unplanned_task_reason", UnplannedReason.values()),
            Map.entry("open_window_task", Task.values()),
            Map.entry("ledger_line_term", LedgerTerm.values()),
            Map.entry("step_mark_kind", MarkKind.values()),
            Map.entry("photo_media_type", MediaType.values()),
            Map.entry("person_role", Role.values()),
            Map.entry("hook_delivery_state", DeliveryState.values()),
            Map.entry("person_language", Language.values()),
            Map.entry("person_ruler", Ruler.values()),
            Map.entry("calendar_language_check", Language.values()),
            Map.entry("calendar_ruler_check", Ruler.values()),
            Map.entry("calendar_link_language_check", Language.values()),
            Map.entry("calendar_link_ruler_check", Ruler.values()),
            Map.entry("site_hold_point_kind", HoldPoint.values()),
            Map.entry("handoff_act_kind", ActKind.values()),
            Map.entry("handoff_act_hold_point", HoldPoint.values()),
            Map.entry("handoff_act_reason", ReturnReason.values()),
            Map.entry("handoff_act_leak_definition", LeakDefinition.values()),
            Map.entry("handoff_entry_rating", RainRating.values()),
            Map.entry("opening_finished", new Coded[] {Task.TEST, Task.WRAP, Task.CLAD}),
            Map.entry("opening_change_frame", Frame.values()),
            Map.entry("opening_change_method", Method.values()),
            Map.entry("pin_task", Task.values()),
            Map.entry("rough_size_place", RoughPlace.values()),
            Map.entry("forecast_choice_source", ForecastSource.values()),
            Map.entry("kept_forecast_source", ForecastSource.values()),
            Map.entry("forecast_fetch_outcome", FetchOutcome.values()),
            Map.entry("labour_answer_method", Method.values()),
            Map.entry("labour_answer_answer", LabourAnswer.Kind.values()),
            Map.entry("job_state", JobStatus.values()));

    static final Set<String> NAMES = CODES.keySet();

    @Autowired
    DSLContext db;

    @ParameterizedTest
    @FieldSource("NAMES")
    void a_table_accepts_exactly_the_codes_of_its_type(String constraint) {
        Coded[] known = Objects.requireNonNull(CODES.get(constraint));

        assertThat(codesIn(constraint))
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(known).map(Coded::code).toList());
    }

    @Test
    void every_list_of_codes_in_the_schema_is_compared_here() {
        Set<String> lists = db
                .fetch("select conname from pg_constraint where contype = 'c' and connamespace = 'public'::regnamespace"
                        + " and pg_get_constraintdef(oid) like '%ARRAY[%'")
                .getValues(0, String.class)
                .stream()
                .filter(name -> !name.matches("(job|person|handoff_act)_check\\d*"))
                .collect(Collectors.toSet());

        assertThat(lists).isEqualTo(NAMES);
    }

    private Set<String> codesIn(String constraint) {
        String definition = Objects.requireNonNull(
                db.fetchSingle("select pg_get_constraintdef(oid) from pg_constraint where conname = ?", constraint)
                        .get(0, String.class));
        Stream<String> codes =
                Pattern.compile("'([^']*)'").matcher(definition).results().map(match -> match.group(1));
        return codes.collect(Collectors.toSet());
    }
}
