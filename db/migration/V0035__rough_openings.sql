-- A rough opening as it was measured on site. A measurement is never changed: a mistake is put right by measuring again, and the
-- newest counts. Its number is made by the database, so that two of one instant have an order.
create table rough_measurement (
    id        uuid primary key,
    number    bigint generated always as identity unique,
    folder_id bigint      not null,
    opening   text        not null,
    site      text        not null,
    note      text        not null,
    person_id bigint      not null,
    person    text        not null,
    at        timestamptz not null,
    foreign key (folder_id, opening) references opening on delete cascade
);
create index rough_measurement_by_opening on rough_measurement (folder_id, opening, at desc, number desc);

-- What was read off, exactly: a 64th of an inch has six decimals of a millimetre.
create table rough_size (
    measurement_id uuid          not null references rough_measurement on delete cascade,
    place          text          not null constraint rough_size_place check (place in (
        'width-sill', 'width-middle', 'width-head', 'height-left', 'height-middle', 'height-right', 'diagonal-rising',
        'diagonal-falling', 'plumb-left', 'plumb-right', 'level-sill')),
    size_mm        numeric(12,6) not null check (size_mm >= 0 and size_mm <= 30000),
    primary key (measurement_id, place)
);

create function rough_measurements_only_grow() returns trigger language plpgsql as $$
begin
    -- a whole job folder may go, and its measurements with it
    if tg_op = 'DELETE' and not exists (select from job_folder where id = old.folder_id) then
        return old;
    end if;
    raise exception 'measurements of rough openings only grow: a mistake is put right by measuring again'
        using errcode = 'restrict_violation';
end $$;
create trigger only_grows before update or delete on rough_measurement
    for each row execute function rough_measurements_only_grow();

create function rough_sizes_only_grow() returns trigger language plpgsql as $$
begin
    if tg_op = 'DELETE' and not exists (select from rough_measurement where id = old.measurement_id) then
        return old;
    end if;
    raise exception 'sizes of rough openings only grow: a mistake is put right by measuring again'
        using errcode = 'restrict_violation';
end $$;
create trigger only_grows before update or delete on rough_size
    for each row execute function rough_sizes_only_grow();

-- Within what a rough opening is taken as it is.
alter table rule_value drop constraint rule_value_rule;
alter table rule_value add constraint rule_value_rule check (rule in (
    'rain_p', 'rain_mm', 'beyond_rain_p', 'rain_persistence', 'wetting_l_m2', 'drying_h', 'install_min_c',
    'install_gust_m_s', 'wrap_gust_m_s', 'dusk_margin_min', 'skin_min', 'cure_before_test_h', 'apron_max_days', 'bare_max_days',
    'apron_uv_days', 'barrier_uv_days', 'cover_min', 'cover_lets_in', 'lee_share', 'storey_m', 'upwind_slope',
    'obstacle_m', 'wall_factor', 'rain_deposition', 'rain_admittance', 'rain_warning_min', 'duration_best',
    'duration_worst', 'delivery_worst_days', 'weather_cell_km', 'apron_width_mm',
    'jamb_flashing_mm', 'head_flashing_mm', 'head_past_jambs_mm', 'pan_width_mm', 'pan_turn_up_mm', 'strip_roll_m', 'bead_mm',
    'cartridge_ml', 'fastener_spacing_mm', 'rough_clearance_mm', 'rough_least_gap_mm',
    'rough_most_gap_mm', 'rough_square_mm', 'plumb_2ft_mm', 'plumb_4ft_mm', 'take_off_waste', 'weight_late_handover', 'weight_crew_days',
    'weight_travel', 'weight_setup', 'weight_overtime', 'weight_open_course', 'weight_rain_risk', 'weight_changed'));
alter table rule_change drop constraint rule_change_rule;
alter table rule_change add constraint rule_change_rule check (rule in (
    'rain_p', 'rain_mm', 'beyond_rain_p', 'rain_persistence', 'wetting_l_m2', 'drying_h', 'install_min_c',
    'install_gust_m_s', 'wrap_gust_m_s', 'dusk_margin_min', 'skin_min', 'cure_before_test_h', 'apron_max_days', 'bare_max_days',
    'apron_uv_days', 'barrier_uv_days', 'cover_min', 'cover_lets_in', 'lee_share', 'storey_m', 'upwind_slope',
    'obstacle_m', 'wall_factor', 'rain_deposition', 'rain_admittance', 'rain_warning_min', 'duration_best',
    'duration_worst', 'delivery_worst_days', 'weather_cell_km', 'apron_width_mm',
    'jamb_flashing_mm', 'head_flashing_mm', 'head_past_jambs_mm', 'pan_width_mm', 'pan_turn_up_mm', 'strip_roll_m', 'bead_mm',
    'cartridge_ml', 'fastener_spacing_mm', 'rough_clearance_mm', 'rough_least_gap_mm',
    'rough_most_gap_mm', 'rough_square_mm', 'plumb_2ft_mm', 'plumb_4ft_mm', 'take_off_waste', 'weight_late_handover', 'weight_crew_days',
    'weight_travel', 'weight_setup', 'weight_overtime', 'weight_open_course', 'weight_rain_risk', 'weight_changed'));
