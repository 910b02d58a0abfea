-- Whoever has the secret of a link reads a crew's calendar without signing in. Only the SHA-256 of the secret is kept, so that
-- nobody who reads the table can use it; it is shown once, to its maker. A link tells of the sites that its maker might see
-- (null: every one). Crews are known by the contractor's own name, whatever folder is in work. A revoked link stays to be read.
create table calendar_link (
    id          bigint generated always as identity primary key,
    crew        text        not null check (crew <> ''),
    secret_hash bytea       not null unique check (length(secret_hash) = 32),
    sites       text[],
    person_id   bigint      not null,
    person      text        not null,
    made_at     timestamptz not null,
    read_at     timestamptz,
    revoked_at  timestamptz,
    revoked_by  text,
    check ((revoked_at is null) = (revoked_by is null))
);
create index calendar_link_by_crew on calendar_link (crew);

-- Up to which publication a crew's calendar has been told; its row is the lock of whoever tells the next one. The number refers to
-- no publication: folders may go, and what was told stays told.
create table calendar (
    crew text primary key check (crew <> ''),
    told bigint not null
);

-- What a crew's calendar told last of each stay: the visits of a day to one site that follow each other. An entry is never
-- deleted, since phones may still have it: its uid stays, and its sequence rises with every change, cancellation included.
create table calendar_entry (
    crew         text             not null references calendar,
    date         date             not null,
    site         text             not null,
    stay         int              not null check (stay >= 1),
    uid          uuid             not null unique,
    sequence     int              not null check (sequence >= 0),
    starts_at    timestamptz      not null,
    ends_at      timestamptz      not null check (ends_at > starts_at),
    summary      text             not null,
    place        text             not null,
    latitude     double precision not null,
    longitude    double precision not null,
    description  text             not null,
    changed_at   timestamptz      not null,
    cancelled_at timestamptz,
    primary key (crew, date, site, stay)
);
