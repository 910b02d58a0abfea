-- Someone who may sign in. The password is kept as its bcrypt hash only. signed_out_at ends every session begun before it.
-- every_site or the rows of person_site say where; ids of sites and crews are the contractor's own, whatever folder is in work.
create table person (
    id            bigint generated always as identity primary key,
    sign_in_name  text        not null check (sign_in_name <> ''),
    name          text        not null check (name <> ''),
    role          text        not null
        constraint person_role check (role in ('scheduler', 'window-crew', 'follow-on', 'tester', 'administrator')),
    every_site    boolean     not null,
    crew          text check (crew <> ''),
    demo          boolean     not null default false,
    password_hash text        not null,
    active        boolean     not null default true,
    signed_out_at timestamptz,
    version       int         not null default 1,
    check ((crew is not null) = (role in ('window-crew', 'follow-on', 'tester')))
);
create unique index person_by_sign_in_name on person (lower(sign_in_name));

create table person_site (
    person_id bigint not null references person on delete cascade,
    site      text   not null check (site <> ''),
    primary key (person_id, site)
);

-- Who changed what, in words; written with the change itself and never altered.
create table change_log (
    id        bigint generated always as identity primary key,
    at        timestamptz not null,
    person_id bigint,
    person    text        not null,
    site      text,
    what      text        not null check (what <> '')
);

create function log_only_grows() returns trigger language plpgsql as $$
begin
    raise exception '% only grows: a mistake is put right by a later entry', tg_table_name using errcode = 'restrict_violation';
end $$;

create trigger only_grows before update or delete on change_log
    for each row execute function log_only_grows();

-- Failed sign-ins of late, by name as typed (lower case) and by address; old ones are swept away.
create table sign_in_failure (
    id      bigint generated always as identity primary key,
    name    text        not null,
    address text        not null,
    at      timestamptz not null
);
create index sign_in_failure_by_time on sign_in_failure (at);
