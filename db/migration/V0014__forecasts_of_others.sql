-- Where a site's forecast comes from. A site has the same id in every job folder, so the choice holds over newer folders too.
-- Without a row, or without a source in it, the site is planned by the forecast of its job folder.
create table forecast_choice (
    site        text primary key check (site <> ''),
    source      text
        constraint forecast_choice_source check (source in ('us-weather-service', 'open-meteo', 'met-norway', 'csv')),
    cell        text check (cell is null or source = 'us-weather-service'),
    every_hours int         not null check (every_hours between 1 and 24),
    version     int         not null default 0,
    person_id   bigint      not null,
    person      text        not null,
    chosen_at   timestamptz not null
);

-- A forecast as a source gave it, whole and never changed: the newest of a site counts, the others show how it changed. Each
-- array has one element an hour from first_hour on; chance_since_s is how many seconds before its hour a chance of rain began.
create table kept_forecast (
    id                bigint generated always as identity primary key,
    site              text               not null,
    source            text               not null
        constraint kept_forecast_source check (source in ('us-weather-service', 'open-meteo', 'met-norway', 'csv')),
    latitude          double precision   not null,
    longitude         double precision   not null,
    issued_at         timestamptz,
    fetched_at        timestamptz        not null,
    remarks           text[]             not null,
    first_hour        timestamptz        not null,
    rain_mm           double precision[] not null check (cardinality(rain_mm) > 0),
    rain_probability  double precision[] not null check (cardinality(rain_probability) = cardinality(rain_mm)),
    chance_since_s    int[]              not null check (cardinality(chance_since_s) = cardinality(rain_mm)),
    wind_m_s          double precision[] not null check (cardinality(wind_m_s) = cardinality(rain_mm)),
    gust_m_s          double precision[] not null check (cardinality(gust_m_s) = cardinality(rain_mm)),
    wind_from_deg     double precision[] not null check (cardinality(wind_from_deg) = cardinality(rain_mm)),
    temperature_c     double precision[] not null check (cardinality(temperature_c) = cardinality(rain_mm)),
    relative_humidity double precision[] not null check (cardinality(relative_humidity) = cardinality(rain_mm))
);
create index kept_forecast_by_site on kept_forecast (site, id desc);

create function kept_forecasts_never_change() returns trigger language plpgsql as $$
begin
    raise exception 'forecast % is kept as it was fetched', old.id using errcode = 'restrict_violation';
end $$;
create trigger never_changes before update or delete on kept_forecast
    for each row execute function kept_forecasts_never_change();

-- How the last go at a site's source ended, and when the next one is due. not_before: the source asked not to be asked until
-- then, which a person cannot hurry. etag and modified name the last whole answer, so that only a newer one is sent.
create table forecast_fetch (
    site        text primary key references forecast_choice on delete cascade,
    tried_at    timestamptz,
    outcome     text constraint forecast_fetch_outcome check (outcome in ('fetched', 'unchanged', 'refused', 'unanswered')),
    words       text        not null default '',
    failures    int         not null default 0 check (failures >= 0),
    due_at      timestamptz not null,
    not_before  timestamptz,
    etag        text,
    modified    text
);
create index forecast_fetch_by_due on forecast_fetch (due_at);
