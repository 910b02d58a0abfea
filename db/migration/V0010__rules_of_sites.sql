-- A rule may have a value of its own at a site; without a site it holds everywhere. The weights of the plan's ledger weigh all
-- sites together and so have none of a site.
alter table rule_value drop constraint rule_value_pkey;
alter table rule_value add column site text;
alter table rule_value add foreign key (folder_id, site) references site on delete cascade;
alter table rule_value add constraint rule_value_once unique nulls not distinct (folder_id, site, rule);
alter table rule_value add constraint rule_value_weights_everywhere check (site is null or rule not like 'weight\_%');

-- What someone changed since the import: the newest change of a rule and place counts, and without a value the rule is again as
-- imported, or else its default. Changes are only ever added.
create table rule_change (
    id        bigint generated always as identity primary key,
    folder_id bigint           not null references job_folder on delete cascade,
    site      text,
    rule      text             not null constraint rule_change_rule check (rule in (
                  'rain_p', 'rain_mm', 'wetting_l_m2', 'drying_h', 'install_min_c', 'install_gust_m_s', 'wrap_gust_m_s',
                  'dusk_margin_min', 'skin_min', 'cure_before_test_h', 'apron_max_days', 'bare_max_days', 'apron_uv_days',
                  'barrier_uv_days', 'cover_min', 'cover_lets_in', 'lee_share', 'weight_late_handover', 'weight_crew_days',
                  'weight_travel', 'weight_setup', 'weight_overtime', 'weight_open_course', 'weight_rain_risk',
                  'weight_changed')),
    value     double precision,
    reason    text             not null,
    person_id bigint           not null,
    person    text             not null,
    at        timestamptz      not null,
    foreign key (folder_id, site) references site on delete cascade,
    constraint rule_change_weights_everywhere check (site is null or rule not like 'weight\_%')
);
create index rule_change_by_folder on rule_change (folder_id, site, rule, id desc);

create function rule_changes_only_grow() returns trigger language plpgsql as $$
begin
    -- a whole job folder may go, and its changes with it
    if tg_op = 'DELETE' and not exists (select from job_folder where id = old.folder_id) then
        return old;
    end if;
    raise exception 'changes of rules only grow: a mistake is put right by a later change' using errcode = 'restrict_violation';
end $$;

create trigger only_grows before update or delete on rule_change for each row execute function rule_changes_only_grow();
