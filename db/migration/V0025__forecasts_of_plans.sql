-- By which forecast of each site a plan was made, as it was named then. kept_id is null where it was the job folder's own; hours
-- from told_until on were counted as open, all of them where it is null. Plans from before this table say nothing of it.
create table plan_forecast (
    plan_id    bigint not null references plan on delete cascade,
    site       text   not null,
    kept_id    bigint references kept_forecast,
    source     text,
    issued_at  timestamptz,
    fetched_at timestamptz,
    told_until timestamptz,
    primary key (plan_id, site),
    check ((kept_id is null) = (source is null)),
    check ((kept_id is null) = (fetched_at is null))
);

create trigger never_changes before update on plan_forecast
    for each row execute function plan_refuses_change();
create trigger goes_with_its_plan before delete on plan_forecast
    for each row execute function plan_keeps_its_parts();
create trigger made_with_its_plan after insert on plan_forecast
    referencing new table as added for each statement execute function plan_is_made_in_one_go();
