-- A forecast that was kept for a site may also go once it is a month old, as long as a newer one is there; one that a plan was made by
-- stays with its plan.
create or replace function kept_forecasts_never_change() returns trigger language plpgsql as $$
begin
    if tg_op = 'DELETE' and (
        not exists (select from site where site.site = old.site)
        or old.fetched_at < now() - interval '30 days'
            and exists (select from kept_forecast newer where newer.site = old.site and newer.id > old.id))
    then
        return old;
    end if;
    raise exception 'forecast % is kept as it was fetched', old.id using errcode = 'restrict_violation';
end $$;
