-- A crew that does not come although its job folder has a shift for it. The shift stays as imported; what the absences that are
-- not withdrawn leave of it is what counts. Without times it is the whole day.
create table absence (
    id           bigint generated always as identity primary key,
    folder_id    bigint      not null,
    crew         text        not null,
    date         date        not null,
    from_time    time,
    until_time   time,
    reason       text        not null,
    person_id    bigint      not null,
    person       text        not null,
    at           timestamptz not null,
    withdrawn_at timestamptz,
    withdrawn_by text,
    foreign key (folder_id, crew) references crew on delete cascade,
    check ((from_time is null) = (until_time is null)),
    check (until_time > from_time),
    check ((withdrawn_at is null) = (withdrawn_by is null))
);
create index absence_by_folder on absence (folder_id, crew, date);
