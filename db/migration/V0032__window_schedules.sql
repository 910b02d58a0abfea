-- A window schedule adds openings to a site of a folder, and changes what it says otherwise of those that are there: the one part of a
-- folder that may change once it is stored. Each time that one is taken in is a row here, which never changes.
create table window_schedule (
    id        bigint generated always as identity primary key,
    folder_id bigint      not null,
    site      text        not null,
    file      text        not null,
    added     int         not null check (added >= 0),
    changed   int         not null check (changed >= 0),
    person_id bigint      not null,
    person    text        not null,
    at        timestamptz not null,
    foreign key (folder_id, site) references site on delete cascade
);
create index window_schedule_by_folder on window_schedule (folder_id, id desc);

-- How an opening stood before a schedule changed it, so that nothing is lost; all blank where the schedule added it.
create table opening_change (
    schedule_id   bigint not null references window_schedule on delete cascade,
    folder_id     bigint not null,
    opening       text   not null,
    was_facade    text,
    was_level     int,
    was_width_mm  int,
    was_height_mm int,
    was_frame     text constraint opening_change_frame check (was_frame in ('wood', 'aluminum', 'vinyl', 'fiberglass')),
    was_method    text constraint opening_change_method check (was_method in ('A', 'A1', 'B', 'B1')),
    primary key (schedule_id, opening),
    foreign key (folder_id, opening) references opening on delete cascade,
    check (num_nulls(was_facade, was_level, was_width_mm, was_height_mm, was_frame, was_method) = 0
        or num_nulls(was_facade, was_level, was_width_mm, was_height_mm, was_frame, was_method) = 6)
);
create index opening_change_by_opening on opening_change (folder_id, opening, schedule_id);

create function window_schedules_only_grow() returns trigger language plpgsql as $$
begin
    -- a whole job folder may go, and its schedules with it
    if tg_op = 'DELETE' and not exists (select from job_folder where id = old.folder_id) then
        return old;
    end if;
    raise exception 'what window schedules changed only grows: a mistake is put right by a later one'
        using errcode = 'restrict_violation';
end $$;
create trigger only_grows before update or delete on window_schedule
    for each row execute function window_schedules_only_grow();
create trigger only_grows before update or delete on opening_change
    for each row execute function window_schedules_only_grow();

-- What the newest schedule says of an opening beyond its design: for people to read. The mark is that of the schedule.
create table opening_note (
    folder_id      bigint not null,
    opening        text   not null,
    mark           text   not null,
    sill_height_mm int,
    x_mm           int,
    head_detail    text   not null,
    jamb_detail    text   not null,
    sill_detail    text   not null,
    remarks        text   not null,
    primary key (folder_id, opening),
    foreign key (folder_id, opening) references opening on delete cascade
);

-- By how much a rough opening is larger than its frame.
alter table rule_value drop constraint rule_value_rule;
alter table rule_value add constraint rule_value_rule check (rule in (
    'rain_p', 'rain_mm', 'beyond_rain_p', 'rain_persistence', 'wetting_l_m2', 'drying_h', 'install_min_c',
    'install_gust_m_s', 'wrap_gust_m_s', 'dusk_margin_min', 'skin_min', 'cure_before_test_h', 'apron_max_days', 'bare_max_days',
    'apron_uv_days', 'barrier_uv_days', 'cover_min', 'cover_lets_in', 'lee_share', 'storey_m', 'upwind_slope',
    'obstacle_m', 'wall_factor', 'rain_deposition', 'rain_admittance', 'rain_warning_min', 'duration_best',
    'duration_worst', 'delivery_worst_days', 'weather_cell_km', 'apron_width_mm',
    'jamb_flashing_mm', 'head_flashing_mm', 'head_past_jambs_mm', 'pan_width_mm', 'pan_turn_up_mm', 'strip_roll_m', 'bead_mm',
    'cartridge_ml', 'fastener_spacing_mm', 'rough_clearance_mm', 'take_off_waste', 'weight_late_handover', 'weight_crew_days',
    'weight_travel', 'weight_setup', 'weight_overtime', 'weight_open_course', 'weight_rain_risk', 'weight_changed'));
alter table rule_change drop constraint rule_change_rule;
alter table rule_change add constraint rule_change_rule check (rule in (
    'rain_p', 'rain_mm', 'beyond_rain_p', 'rain_persistence', 'wetting_l_m2', 'drying_h', 'install_min_c',
    'install_gust_m_s', 'wrap_gust_m_s', 'dusk_margin_min', 'skin_min', 'cure_before_test_h', 'apron_max_days', 'bare_max_days',
    'apron_uv_days', 'barrier_uv_days', 'cover_min', 'cover_lets_in', 'lee_share', 'storey_m', 'upwind_slope',
    'obstacle_m', 'wall_factor', 'rain_deposition', 'rain_admittance', 'rain_warning_min', 'duration_best',
    'duration_worst', 'delivery_worst_days', 'weather_cell_km', 'apron_width_mm',
    'jamb_flashing_mm', 'head_flashing_mm', 'head_past_jambs_mm', 'pan_width_mm', 'pan_turn_up_mm', 'strip_roll_m', 'bead_mm',
    'cartridge_ml', 'fastener_spacing_mm', 'rough_clearance_mm', 'take_off_waste', 'weight_late_handover', 'weight_crew_days',
    'weight_travel', 'weight_setup', 'weight_overtime', 'weight_open_course', 'weight_rain_risk', 'weight_changed'));
