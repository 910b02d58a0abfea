-- A source may tell one chance of rain for several hours together. It is the chance of rain at any time in them, so it is counted
-- once however many of them a task touches: chance_from is the start of that period, for most hours their own.
alter table forecast_hour add column chance_from timestamptz;
update forecast_hour set chance_from = hour_start;
alter table forecast_hour alter column chance_from set not null;
alter table forecast_hour add check (chance_from <= hour_start);
