-- What months bring at a site on average, as someone brought it in; what is brought in for a site takes the place of all that it had.
create table kept_normals (
    folder_id  bigint           not null references job_folder on delete cascade,
    site       text             not null,
    month      int              not null check (month between 1 and 12),
    rain_mm    double precision not null check (rain_mm between 0 and 5000),
    rain_days  double precision not null check (rain_days between 0 and 31),
    cold_days  double precision not null check (cold_days between 0 and 31),
    gust_days  double precision not null check (gust_days between 0 and 31),
    primary key (folder_id, site, month),
    foreign key (folder_id, site) references site on delete cascade
);
