-- Where the search of a planning run stands: what its best plan so far is decoded from, written over from time to time while the
-- run is at work, and gone with its end. A node that takes over from one that died or went down goes on from here. How long
-- the search had been at work, and how many moves it had tried, is of that moment too.
create table run_waypoint (
    job_id     bigint      primary key references planning_run on delete cascade,
    saved_at   timestamptz not null,
    elapsed_ms bigint      not null check (elapsed_ms >= 0),
    moves      bigint      not null check (moves >= 0),
    medium     bigint      not null,
    soft       bigint      not null,
    place      text        not null
);
