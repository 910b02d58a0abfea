-- What was answered to a change that another program sent with a key of its own. The row is written in the transaction of the change:
-- either both are there or neither, and whoever sends the same key meanwhile waits for its end. Until it ends the status is null.
create table kept_answer (
    sender       text        not null check (sender <> ''),
    key          text        not null check (key <> ''),
    request_hash bytea       not null check (length(request_hash) = 32),
    at           timestamptz not null,
    status       int check (status between 200 and 499),
    content_type text,
    etag         text,
    location     text,
    body         bytea,
    primary key (sender, key)
);
create index kept_answer_by_time on kept_answer (at);
