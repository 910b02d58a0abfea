-- Long work lives here, so that it outlives the process that does it. A job is queued, runs on some node, and ends as done,
-- failed (with the reason) or stopped; how far it has come stands in a table of the module whose work it is. A node that
-- dies loses its claim (scheduled_tasks, below), and the job starts again from its payload with the next attempt; whatever
-- an earlier attempt still wants to write is refused by that number.
create table job (
    id           bigint generated always as identity primary key,
    kind         text        not null check (kind <> ''),
    payload      text        not null,
    state        text        not null default 'queued'
        constraint job_state check (state in ('queued', 'running', 'done', 'failed', 'stopped')),
    attempt      int         not null default 0 check (attempt >= 0),
    stop_asked   boolean     not null default false,
    failure      text,
    asked_at     timestamptz not null,
    started_at   timestamptz,
    ended_at     timestamptz,
    check ((failure is not null) = (state = 'failed')),
    check ((ended_at is not null) = (state in ('done', 'failed', 'stopped')))
);

-- The claims of db-scheduler (its own table and column names): which node has which job, and when it last gave a sign of life.
create table scheduled_tasks (
    task_name            text        not null,
    task_instance        text        not null,
    task_data            bytea,
    execution_time       timestamptz not null,
    picked               boolean     not null,
    picked_by            text,
    last_success         timestamptz,
    last_failure         timestamptz,
    consecutive_failures int,
    last_heartbeat       timestamptz,
    version              bigint      not null,
    priority             smallint,
    primary key (task_name, task_instance)
);
create index scheduled_tasks_by_time on scheduled_tasks (execution_time);
create index scheduled_tasks_by_heartbeat on scheduled_tasks (last_heartbeat);

-- A request to plan a folder, and how far the run has come. Its state is its job's. The newest run of a folder counts.
create table planning_run (
    job_id           bigint primary key references job,
    folder_id        bigint not null references job_folder on delete cascade,
    plan_from        timestamptz,
    time_limit_ms    bigint check (time_limit_ms >= 0),
    move_limit       bigint check (move_limit >= 0),
    seed             bigint not null,
    elapsed_ms       bigint not null default 0,
    moves            bigint not null default 0,
    medium           bigint not null default 0,
    soft             bigint not null default 0,
    planned          int    not null default 0,
    unplanned        int    not null default 0,
    plan_id          bigint references plan on delete cascade
);
create index planning_run_by_folder on planning_run (folder_id, job_id);
