-- Sites, walls, crews and shifts of a folder may also be put in by hand, beside the openings that window schedules bring. Each such
-- change raises the folder's version in the same transaction, so that what a node has read of it is known to be old.
alter table job_folder add column version int not null default 0;

-- The invented sample is marked, so that it can go again without anything of anybody's own.
alter table job_folder add column sample boolean not null default false;
update job_folder set sample = true
    where id in (select folder_id from publication where person_id is null and person = 'the sample');

-- Marks still stay for ever, but for those of the invented sample, which goes as a whole.
create function step_marks_only_grow() returns trigger language plpgsql as $$
begin
    if tg_op = 'DELETE' and exists (select from job_folder where id = old.folder_id and sample) then
        return old;
    end if;
    raise exception '% only grows: a mistake is put right by a later entry', tg_table_name using errcode = 'restrict_violation';
end $$;
drop trigger only_grows on step_mark;
create trigger only_grows before update or delete on step_mark
    for each row execute function step_marks_only_grow();

-- A forecast that was kept for a site goes when no folder knows the site any more.
create or replace function kept_forecasts_never_change() returns trigger language plpgsql as $$
begin
    if tg_op = 'DELETE' and not exists (select from site where site.site = old.site) then
        return old;
    end if;
    raise exception 'forecast % is kept as it was fetched', old.id using errcode = 'restrict_violation';
end $$;

-- Someone who runs the firm alone plans and manages people: one account for both.
alter table person drop constraint person_role;
alter table person add constraint person_role
    check (role in ('scheduler', 'window-crew', 'follow-on', 'tester', 'administrator', 'contractor'));
