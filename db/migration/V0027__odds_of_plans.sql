-- A reckoning of what weather, work and deliveries may still do to a stored plan, and what came of it; its state is its job's.
-- The report is one document: nobody asks for a part of it, it is only ever read whole and cut to a person's sites then. basis
-- says, by parts of the job, what it was reckoned from, so that a report is never taken for newer than it is. The newest
-- report of a plan is kept; older ones go when it comes.
create table odds_run (
    job_id      bigint primary key references job on delete cascade,
    folder_id   bigint not null references job_folder on delete cascade,
    plan_id     bigint not null references plan on delete cascade,
    trials      int    not null check (trials > 0),
    seed        bigint not null,
    done        int    not null default 0 check (done between 0 and trials),
    basis       text,
    report      text,
    reckoned_at timestamptz,
    check ((report is null) = (reckoned_at is null)),
    check (report is null or basis is not null)
);
create index odds_run_by_plan on odds_run (plan_id, job_id desc);
