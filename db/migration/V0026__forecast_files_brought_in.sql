-- A file that a person brought in for a site is kept like a fetched forecast; nobody is asked for the next one.
alter table forecast_choice drop constraint forecast_choice_source;
alter table forecast_choice add constraint forecast_choice_source
    check (source in ('us-weather-service', 'open-meteo', 'met-norway', 'csv', 'upload'));
alter table kept_forecast drop constraint kept_forecast_source;
alter table kept_forecast add constraint kept_forecast_source
    check (source in ('us-weather-service', 'open-meteo', 'met-norway', 'csv', 'upload'));
