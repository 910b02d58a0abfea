-- Each line of the history is sealed soon after it is written: a digest over its words and over the seal before it.
create table history_seal (
    seq          bigint primary key check (seq > 0),
    change_id    bigint not null unique references change_log (id),
    nonce        bytea  not null check (length(nonce) = 16),
    words_sha256 text   not null check (words_sha256 ~ '^[0-9a-f]{64}$'),
    sha256       text   not null unique check (sha256 ~ '^[0-9a-f]{64}$')
);

create trigger only_grows before update or delete on history_seal
    for each row execute function log_only_grows();
