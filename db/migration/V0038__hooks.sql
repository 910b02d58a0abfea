-- An address of another program that is told when openings are released, accepted or returned. The secret signs what is sent and so
-- must be kept as it is. A hook tells of the sites that its owner may see at the moment of sending, narrowed to sites (null: all).
create table hook (
    id         bigint generated always as identity primary key,
    person_id  bigint      not null references person on delete cascade,
    name       text        not null check (name <> ''),
    url        text        not null check (url <> ''),
    secret     text        not null check (length(secret) >= 32),
    kinds      text[]      not null check (cardinality(kinds) > 0),
    sites      text[],
    made_by    text        not null,
    made_at    timestamptz not null,
    ended_at   timestamptz,
    ended_by   text,
    check ((ended_at is null) = (ended_by is null))
);
create index hook_by_person on hook (person_id);

-- The outbox: written in the transaction of the act that it tells of, so that nothing is told that did not happen and nothing that did
-- is forgotten. One act is told once to each hook; the body never changes, however often it is sent. Who sends one first moves its
-- due_at ahead: should the node die, another one sends it then.
create table hook_delivery (
    id         uuid        primary key,
    hook_id    bigint      not null references hook on delete cascade,
    act_id     bigint      not null,
    kind       text        not null,
    site       text        not null,
    body       text        not null,
    made_at    timestamptz not null,
    state      text        not null constraint hook_delivery_state check (state in ('waiting', 'delivered', 'given-up')),
    due_at     timestamptz,
    attempts   int         not null default 0 check (attempts >= 0),
    last_at    timestamptz,
    last_words text,
    unique (hook_id, act_id),
    check ((due_at is null) = (state <> 'waiting'))
);
create index hook_delivery_due on hook_delivery (due_at) where state = 'waiting';
