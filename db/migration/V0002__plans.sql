-- A plan is what the planner answered about one folder. A better one is a new plan with a higher id: the newest counts.
-- It is immutable for everyone, the application included: triggers refuse to change its rows, to take single rows away,
-- and to add rows after the transaction that made it (made_in). It goes only as a whole, with its folder.
create table plan (
    id          bigint generated always as identity primary key,
    folder_id   bigint      not null references job_folder on delete cascade,
    made_at     timestamptz not null,
    made_in     bigint      not null default pg_current_xact_id()::text::bigint,
    starts_at   timestamptz not null,
    horizon_end timestamptz not null,
    hard        bigint      not null check (hard = 0),
    medium      bigint      not null,
    soft        bigint      not null,
    unique (folder_id, id)
);

-- One task at one opening, on a crew's sheet; sorted by crew, then start, which is row_no.
create table visit (
    plan_id   bigint      not null references plan on delete cascade,
    row_no    int         not null,
    crew      text        not null,
    date      date        not null,
    sequence  int         not null check (sequence >= 1),
    site      text        not null,
    facade    text        not null,
    level     int         not null,
    opening   text        not null,
    task      text        not null constraint visit_task check (task in ('install', 'test', 'wrap', 'clad')),
    starts_at timestamptz not null,
    ends_at   timestamptz not null check (ends_at > starts_at),
    primary key (plan_id, row_no),
    unique (plan_id, opening, task),
    unique (plan_id, crew, date, sequence)
);

-- What could not be placed, with the reason that binds.
create table unplanned_task (
    plan_id bigint not null references plan on delete cascade,
    row_no  int    not null,
    opening text   not null,
    task    text   not null constraint unplanned_task_task check (task in ('install', 'test', 'wrap', 'clad')),
    reason  text   not null
        constraint unplanned_task_reason check (reason in (
            'no crew trained', 'no delivery', 'no dry window long enough', 'horizon full', 'waits for another task',
            'apron limit')),
    detail  text   not null,
    primary key (plan_id, row_no),
    unique (plan_id, opening, task)
);

-- Openings that stand open and that the plan cannot close before the next rain.
create table cover_now (
    plan_id          bigint      not null references plan on delete cascade,
    row_no           int         not null,
    opening          text        not null,
    open_since       timestamptz,
    next_rain        timestamptz not null,
    minutes_to_close int         not null check (minutes_to_close >= 0),
    primary key (plan_id, row_no),
    unique (plan_id, opening)
);

-- When a task may be done at a facade, as the plan saw it; never a statement that work at height is safe.
create table open_window (
    plan_id    bigint      not null references plan on delete cascade,
    row_no     int         not null,
    site       text        not null,
    facade     text        not null,
    task       text        not null constraint open_window_task check (task in ('install', 'test', 'wrap', 'clad')),
    opens_at   timestamptz not null,
    shuts_at   timestamptz not null check (shuts_at > opens_at),
    primary key (plan_id, row_no)
);

-- The plan's cost, term by term: cost is amount times weight, to the unit.
create table ledger_line (
    plan_id bigint not null references plan on delete cascade,
    row_no  int    not null,
    term    text   not null
        constraint ledger_line_term check (term in (
            'late_handover', 'crew_days', 'travel', 'setup', 'overtime', 'open_course', 'rain_risk', 'changed')),
    amount  bigint not null,
    weight  bigint not null,
    cost    bigint not null check (cost = amount * weight),
    primary key (plan_id, row_no),
    unique (plan_id, term)
);

create function plan_refuses_change() returns trigger language plpgsql as $$
begin
    raise exception 'plan % is immutable: make a new plan instead', coalesce(to_jsonb(old) ->> 'plan_id', to_jsonb(old) ->> 'id')
        using errcode = 'restrict_violation';
end $$;

-- A part of a plan may go only when the plan itself has gone in the same stroke.
create function plan_keeps_its_parts() returns trigger language plpgsql as $$
begin
    if exists (select from plan where id = old.plan_id) then
        raise exception 'plan % is immutable: its rows go only with the whole plan', old.plan_id
            using errcode = 'restrict_violation';
    end if;
    return old;
end $$;

create function plan_is_made_in_one_go() returns trigger language plpgsql as $$
begin
    if exists (
        select from (select distinct plan_id from added) part
        join plan on plan.id = part.plan_id
        where plan.made_in <> pg_current_xact_id()::text::bigint)
    then
        raise exception 'a finished plan is immutable: no row may be added to it' using errcode = 'restrict_violation';
    end if;
    return null;
end $$;

create trigger plan_never_changes before update on plan
    for each row execute function plan_refuses_change();

do $$
declare part text;
begin
    foreach part in array array['visit', 'unplanned_task', 'cover_now', 'open_window', 'ledger_line'] loop
        execute format('create trigger never_changes before update on %I
            for each row execute function plan_refuses_change()', part);
        execute format('create trigger goes_with_its_plan before delete on %I
            for each row execute function plan_keeps_its_parts()', part);
        execute format('create trigger made_with_its_plan after insert on %I
            referencing new table as added for each statement execute function plan_is_made_in_one_go()', part);
    end loop;
end $$;
