-- A job folder is what one planning run is told. It is saved whole or not at all, and never changed afterwards: an import
-- of newer files makes a new folder. Ids of sites, openings and crews are the contractor's own and unique within a folder
-- only, so every table is keyed by folder and id. row_no is the row's place in its file, from 0: lists keep that order.
create table job_folder (
    id          bigint generated always as identity primary key,
    name        text        not null check (name <> ''),
    imported_at timestamptz not null
);

-- Clock times of a site are read in its zone; terrain is the category of EN 1991-1-4.
create table site (
    folder_id bigint           not null references job_folder on delete cascade,
    site      text             not null check (site <> ''),
    row_no    int              not null,
    name      text             not null,
    latitude  double precision not null check (latitude between -90 and 90),
    longitude double precision not null check (longitude between -180 and 180),
    time_zone text             not null,
    terrain   text             not null constraint site_terrain check (terrain in ('I', 'II', 'III', 'IV')),
    primary key (folder_id, site),
    unique (folder_id, row_no)
);

-- A wall; its name is unique within its site only.
create table facade (
    folder_id    bigint           not null,
    site         text             not null,
    facade       text             not null check (facade <> ''),
    row_no       int              not null,
    azimuth_deg  double precision not null check (azimuth_deg between 0 and 360),
    handover_due date,
    primary key (folder_id, site, facade),
    unique (folder_id, row_no),
    foreign key (folder_id, site) references site on delete cascade
);

-- An opening as designed, with the line of its step list that was done last when it was imported (0: none).
create table opening (
    folder_id    bigint  not null,
    opening      text    not null check (opening <> ''),
    row_no       int     not null,
    site         text    not null,
    facade       text    not null,
    level        int     not null,
    width_mm     int     not null check (width_mm > 0),
    height_mm    int     not null check (height_mm > 0),
    frame        text    not null constraint opening_frame check (frame in ('wood', 'aluminum', 'vinyl', 'fiberglass')),
    method       text    not null constraint opening_method check (method in ('A', 'A1', 'B', 'B1')),
    approach     text    not null constraint opening_approach check (approach in ('drainage', 'barrier')),
    second_layer text    not null
        constraint opening_second_layer check (second_layer in ('none', 'tuck', 'drain-between')),
    delivered_on date    not null,
    water_test   boolean not null,
    priority     int     not null check (priority >= 0),
    done         int     not null check (done >= 0),
    done_at      timestamptz,
    primary key (folder_id, opening),
    unique (folder_id, row_no),
    foreign key (folder_id, site, facade) references facade on delete cascade
);

-- A crew has one trade. No methods: trained for all of them.
create table crew (
    folder_id bigint           not null references job_folder on delete cascade,
    crew      text             not null check (crew <> ''),
    row_no    int              not null,
    trade     text             not null constraint crew_trade check (trade in ('window', 'tester', 'wrap', 'siding')),
    methods   text[]           not null constraint crew_methods check (methods <@ array['A', 'A1', 'B', 'B1']),
    latitude  double precision not null check (latitude between -90 and 90),
    longitude double precision not null check (longitude between -180 and 180),
    time_zone text             not null,
    primary key (folder_id, crew),
    unique (folder_id, row_no)
);

-- A crew's work day, in the clock time of the crew's zone; at most one a date, so the date names it.
create table shift (
    folder_id      bigint not null,
    crew           text   not null,
    date           date   not null,
    row_no         int    not null,
    start_time     time   not null,
    end_time       time   not null check (end_time > start_time),
    break_start    time,
    break_end      time,
    overtime_until time check (overtime_until >= end_time),
    primary key (folder_id, crew, date),
    unique (folder_id, row_no),
    foreign key (folder_id, crew) references crew on delete cascade,
    check ((break_start is null) = (break_end is null)),
    check (break_end >= break_start)
);

-- Minutes between two places, each a site or a crew's base, in this direction only. Pairs that are not here are estimated.
create table travel_leg (
    folder_id  bigint not null references job_folder on delete cascade,
    from_place text   not null,
    to_place   text   not null,
    minutes    int    not null check (minutes >= 0),
    primary key (folder_id, from_place, to_place)
);

-- One forecast a site; it may have no hours, which says that nothing is forecast there.
create table forecast (
    folder_id bigint not null,
    site      text   not null,
    row_no    int    not null,
    primary key (folder_id, site),
    unique (folder_id, row_no),
    foreign key (folder_id, site) references site on delete cascade
);

-- Rain is the hour's total; the wind comes from wind_from_deg, clockwise from true north.
create table forecast_hour (
    folder_id         bigint           not null,
    site              text             not null,
    hour_start        timestamptz      not null,
    rain_mm           double precision not null check (rain_mm >= 0),
    rain_probability  double precision not null check (rain_probability between 0 and 1),
    wind_m_s          double precision not null check (wind_m_s >= 0),
    gust_m_s          double precision not null check (gust_m_s >= 0),
    wind_from_deg     double precision not null,
    temperature_c     double precision not null,
    relative_humidity double precision not null,
    primary key (folder_id, site, hour_start),
    foreign key (folder_id, site) references forecast on delete cascade
);

-- Minutes of a task; a row without a method serves every method that has no row of its own. Decimals stay exact.
create table labour_row (
    folder_id        bigint  not null references job_folder on delete cascade,
    row_no           int     not null,
    task             text    not null constraint labour_row_task check (task in ('install', 'test', 'wrap', 'clad')),
    method           text constraint labour_row_method check (method in ('A', 'A1', 'B', 'B1')),
    fixed_min        numeric not null check (fixed_min >= 0),
    per_m2_min       numeric not null check (per_m2_min >= 0),
    pan_min          numeric not null check (pan_min >= 0),
    setup_site_min   int     not null check (setup_site_min >= 0),
    setup_facade_min int     not null check (setup_facade_min >= 0),
    setup_level_min  int     not null check (setup_level_min >= 0),
    primary key (folder_id, row_no),
    unique nulls not distinct (folder_id, task, method)
);

-- The numbers that this contractor changed; a rule that is not here has its default.
create table rule_value (
    folder_id bigint           not null references job_folder on delete cascade,
    rule      text             not null
        constraint rule_value_rule check (rule in (
            'rain_p', 'rain_mm', 'wetting_l_m2', 'drying_h', 'install_min_c', 'install_gust_m_s', 'wrap_gust_m_s',
            'dusk_margin_min', 'skin_min', 'cure_before_test_h', 'apron_max_days', 'bare_max_days',
            'weight_late_handover', 'weight_crew_days', 'weight_travel', 'weight_setup', 'weight_overtime',
            'weight_open_course', 'weight_rain_risk', 'weight_changed')),
    value     double precision not null,
    primary key (folder_id, rule)
);

-- The plan that people already have; a pinned visit may not move.
create table published_visit (
    folder_id bigint      not null,
    row_no    int         not null,
    crew      text        not null,
    date      date        not null,
    sequence  int         not null check (sequence >= 1),
    site      text        not null,
    facade    text        not null,
    level     int         not null,
    opening   text        not null,
    task      text        not null constraint published_visit_task check (task in ('install', 'test', 'wrap', 'clad')),
    starts_at timestamptz not null,
    ends_at   timestamptz not null check (ends_at > starts_at),
    pinned    boolean     not null,
    primary key (folder_id, row_no),
    unique (folder_id, opening, task),
    foreign key (folder_id, crew) references crew on delete cascade,
    foreign key (folder_id, opening) references opening on delete cascade
);
