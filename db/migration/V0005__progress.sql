-- Bytes by the digest of what they hold, so that every node and every backup of the database has them.
create table stored_file (
    sha256    text        primary key check (sha256 ~ '^[0-9a-f]{64}$'),
    content   bytea       not null,
    stored_at timestamptz not null
);

-- What was done at an opening, line by line of its work list, and what was undone again. The state of an opening is the
-- replay of its marks in the order of their ids, on top of what the folder said when it was imported. The log only grows,
-- so a folder with marks stays. mark_key is made on the device: a mark that is sent twice is one mark. marked_at is the
-- device's clock, received_at ours. Photos may arrive after the mark that names them.
create table step_mark (
    id          bigint generated always as identity primary key,
    folder_id   bigint      not null,
    opening     text        not null,
    site        text        not null,
    line        text        not null check (line <> ''),
    kind        text        not null constraint step_mark_kind check (kind in ('done', 'undone')),
    person_id   bigint      not null,
    person      text        not null,
    crew        text,
    marked_at   timestamptz not null,
    received_at timestamptz not null,
    mark_key    uuid        not null unique,
    note        text check (length(note) between 1 and 2000),
    reason      text check (length(reason) between 1 and 2000),
    photos      uuid[]      not null default '{}',
    foreign key (folder_id, opening) references opening,
    foreign key (folder_id, site) references site,
    check ((reason is not null) = (kind = 'undone'))
);
create index step_mark_by_opening on step_mark (folder_id, opening, id);

create trigger only_grows before update or delete on step_mark
    for each row execute function log_only_grows();

-- A photo taken at an opening; its id is made on the device.
create table photo (
    id          uuid        primary key,
    folder_id   bigint      not null,
    opening     text        not null,
    site        text        not null,
    person_id   bigint      not null,
    person      text        not null,
    taken_at    timestamptz not null,
    received_at timestamptz not null,
    sha256      text        not null references stored_file,
    media_type  text        not null
        constraint photo_media_type check (media_type in ('image/jpeg', 'image/png', 'image/webp')),
    size_bytes  int         not null check (size_bytes > 0),
    foreign key (folder_id, opening) references opening,
    foreign key (folder_id, site) references site
);
create index photo_by_opening on photo (folder_id, opening, taken_at);

alter table rule_value drop constraint rule_value_rule;
alter table rule_value add constraint rule_value_rule check (rule in (
    'rain_p', 'rain_mm', 'wetting_l_m2', 'drying_h', 'install_min_c', 'install_gust_m_s', 'wrap_gust_m_s',
    'dusk_margin_min', 'skin_min', 'cure_before_test_h', 'apron_max_days', 'bare_max_days', 'apron_uv_days',
    'barrier_uv_days', 'weight_late_handover', 'weight_crew_days', 'weight_travel', 'weight_setup', 'weight_overtime',
    'weight_open_course', 'weight_rain_risk', 'weight_changed'));
