-- Where a site is found by road, line by line as people write it; empty: not told. The planner goes by latitude and longitude.
alter table site add column address text not null default ''
    constraint site_address check (length(address) <= 500);
-- How many people a crew has; null: not told. Labour minutes are those of the labour table, whatever stands here.
alter table crew add column people int constraint crew_people check (people between 1 and 20);
