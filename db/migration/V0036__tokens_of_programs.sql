-- What another program shows in place of a person's password. Only the SHA-256 of the secret is kept, so that nobody who reads the
-- table can use it; it is shown once, to its maker. A token never gives more than its person may at the moment of use: scopes and
-- sites (null: every one of the person's) only take away. One that was revoked or has expired stays to be read.
create table api_token (
    id          bigint generated always as identity primary key,
    person_id   bigint      not null references person on delete cascade,
    name        text        not null check (name <> ''),
    secret_hash bytea       not null unique check (length(secret_hash) = 32),
    scopes      text[]      not null check (cardinality(scopes) > 0),
    sites       text[],
    made_by     text        not null,
    made_at     timestamptz not null,
    expires_at  timestamptz not null check (expires_at > made_at),
    used_at     timestamptz,
    revoked_at  timestamptz,
    revoked_by  text,
    check ((revoked_at is null) = (revoked_by is null))
);
create index api_token_by_person on api_token (person_id);
