-- How the best plan of a run grew better: its cost from each moment on. A point is kept only where the cost changed and the
-- run is a twentieth older than at the point before, so that an hour has some 200; the last is the plan's own cost. A run
-- that begins again after its process died begins its points again.
create table run_point (
    job_id    bigint not null references planning_run on delete cascade,
    at_ms     bigint not null check (at_ms >= 0),
    medium    bigint not null,
    soft      bigint not null,
    unplanned int    not null check (unplanned >= 0),
    primary key (job_id, at_ms)
);
