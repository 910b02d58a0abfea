package drylap.platform;

import static org.jooq.impl.DSL.inline;

import org.jooq.DSLContext;
import org.springframework.stereotype.Component;

/**
 * Whose job is next: of those that wait, the first of each asker about each matter comes before anybody's second, and of these the one whose last
 * turn is longest ago; equals in the order in which they were asked for. What runs counts as its asker's first, and what was begun and given back
 * goes before all. So one person who asks for ten plans holds nobody else up for longer than the plan that is being made.
 */
@Component
class Turns {
    /** What db-scheduler gives to all that has none of its own, such as regular work, which takes no time and goes first. */
    private static final int OTHERS = 50;

    /** From there on nobody's turn differs. */
    private static final int MOST = 1000;

    /** Rows that another ranks or takes just now are left to it: nobody waits for anybody here, whatever else his transaction holds. */
    private static final String RANK = """
            with under_way as (
                select id, asker, about, state, started_at from job where state in ('queued', 'running')),
            placed as (
                select id, state, started_at,
                    greatest(
                        case when asker is null then 1 else row_number() over (partition by asker order by state = 'queued', id) end,
                        case when about is null then 1 else row_number() over (partition by about order by state = 'queued', id) end)
                        as place,
                    greatest(
                        (select max(j.started_at) from job j where j.asker = under_way.asker),
                        (select max(j.started_at) from job j where j.about = under_way.about))
                        as last_turn
                from under_way),
            ranked as (
                select id::text as instance,
                    ({0} - least({1}, row_number() over (order by started_at is null, place, last_turn nulls first, id)))::smallint as turn
                from placed where state = 'queued'),
            waiting as (
                select t.task_instance, ranked.turn
                from scheduled_tasks t join ranked on t.task_instance = ranked.instance
                where t.task_name = {2} and not t.picked and t.priority is distinct from ranked.turn
                for update of t skip locked)
            update scheduled_tasks t set priority = waiting.turn
            from waiting where t.task_name = {2} and t.task_instance = waiting.task_instance""";

    private final DSLContext db;

    Turns(DSLContext db) {
        this.db = db;
    }

    /** Ranks all that waits anew: whenever a job is asked for, and whenever one ends. */
    void rank() {
        db.execute(RANK, inline(OTHERS), inline(MOST), inline(JobTask.NAME));
    }
}
