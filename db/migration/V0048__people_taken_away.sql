-- Someone's name may be taken out of all that is kept, once and for good: "person 17" stands for it from then on, 17 being the person's
-- number. One row each time that it was done; its transaction, made_in at that
-- time, is the only one in which what else never changes may change.
create table person_taken_away (
    id        bigint generated always as identity primary key,
    person_id bigint      not null,
    at        timestamptz not null default now(),
    made_in   bigint      not null default pg_current_xact_id()::text::bigint
);
create trigger only_grows before update or delete on person_taken_away
    for each row execute function log_only_grows();

alter table person add column taken_away boolean not null default false;
alter table person add check (not (taken_away and active));

-- A sealed line of the history that a name was taken out of: a digest over the words that are left, by which they are checked from then
-- on. The newest of a line counts. The act's own line of the history, sealed like any, has the digest over all rows of the act.
create table history_words_gone (
    change_id    bigint not null references change_log,
    act_id       bigint not null references person_taken_away,
    nonce        bytea  not null check (length(nonce) = 16),
    words_sha256 text   not null check (words_sha256 ~ '^[0-9a-f]{64}$'),
    primary key (change_id, act_id)
);

-- The words without the names that go in this transaction: drylap.names_going holds what stands for them, and a pattern for each.
create function name_taken_out(words text) returns text language plpgsql stable as $$
declare
    going constant jsonb := nullif(current_setting('drylap.names_going', true), '')::jsonb;
    name jsonb;
begin
    for name in select value from jsonb_array_elements(going -> 'names') loop
        words := regexp_replace(words, name ->> 'pattern', going ->> 'placeholder', name ->> 'flags');
    end loop;
    return words;
end $$;

-- Whether this transaction takes someone away and a row differs by nothing but their name.
create function only_a_name_goes(was jsonb, becomes jsonb) returns boolean language sql stable as $$
    select exists (
            select from person_taken_away
            where made_in = pg_current_xact_id()::text::bigint and at = now()
                and 'person ' || person_id = nullif(current_setting('drylap.names_going', true), '')::jsonb ->> 'placeholder')
        and not exists (
            select from jsonb_each(was) w full join jsonb_each(becomes) b on b.key = w.key
            where b.value is distinct from w.value
                and b.value is distinct from case jsonb_typeof(w.value)
                    when 'string' then to_jsonb(name_taken_out(w.value #>> '{}'))
                    else name_taken_out(w.value::text)::jsonb end)
$$;

-- All that only grows lets a name go, and nothing else.
create or replace function log_only_grows() returns trigger language plpgsql as $$
begin
    if tg_op = 'UPDATE' and only_a_name_goes(to_jsonb(old), to_jsonb(new)) then
        return new;
    end if;
    raise exception '% only grows: a mistake is put right by a later entry', tg_table_name using errcode = 'restrict_violation';
end $$;

create or replace function step_marks_only_grow() returns trigger language plpgsql as $$
begin
    if tg_op = 'DELETE' and exists (select from job_folder where id = old.folder_id and sample) then
        return old;
    end if;
    if tg_op = 'UPDATE' and only_a_name_goes(to_jsonb(old), to_jsonb(new)) then
        return new;
    end if;
    raise exception '% only grows: a mistake is put right by a later entry', tg_table_name using errcode = 'restrict_violation';
end $$;

create or replace function handoff_only_grows() returns trigger language plpgsql as $$
begin
    -- a whole job folder may go, and its acts with it
    if tg_op = 'DELETE' and not exists (select from job_folder where id = old.folder_id) then
        return old;
    end if;
    if tg_op = 'UPDATE' and only_a_name_goes(to_jsonb(old), to_jsonb(new)) then
        return new;
    end if;
    raise exception 'hand-off % only grows: a mistake is put right by a later act', tg_table_name
        using errcode = 'restrict_violation';
end $$;

create or replace function rule_changes_only_grow() returns trigger language plpgsql as $$
begin
    -- a whole job folder may go, and its changes with it
    if tg_op = 'DELETE' and not exists (select from job_folder where id = old.folder_id) then
        return old;
    end if;
    if tg_op = 'UPDATE' and only_a_name_goes(to_jsonb(old), to_jsonb(new)) then
        return new;
    end if;
    raise exception 'changes of rules only grow: a mistake is put right by a later change' using errcode = 'restrict_violation';
end $$;

create or replace function labour_answers_only_grow() returns trigger language plpgsql as $$
begin
    -- a whole job folder may go, and its answers with it
    if tg_op = 'DELETE' and not exists (select from job_folder where id = old.folder_id) then
        return old;
    end if;
    if tg_op = 'UPDATE' and only_a_name_goes(to_jsonb(old), to_jsonb(new)) then
        return new;
    end if;
    raise exception 'answers on labour only grow: a mistake is put right by a later answer' using errcode = 'restrict_violation';
end $$;

create or replace function window_schedules_only_grow() returns trigger language plpgsql as $$
begin
    -- a whole job folder may go, and its schedules with it
    if tg_op = 'DELETE' and not exists (select from job_folder where id = old.folder_id) then
        return old;
    end if;
    if tg_op = 'UPDATE' and only_a_name_goes(to_jsonb(old), to_jsonb(new)) then
        return new;
    end if;
    raise exception 'what window schedules changed only grows: a mistake is put right by a later one'
        using errcode = 'restrict_violation';
end $$;

create or replace function rough_measurements_only_grow() returns trigger language plpgsql as $$
begin
    -- a whole job folder may go, and its measurements with it
    if tg_op = 'DELETE' and not exists (select from job_folder where id = old.folder_id) then
        return old;
    end if;
    if tg_op = 'UPDATE' and only_a_name_goes(to_jsonb(old), to_jsonb(new)) then
        return new;
    end if;
    raise exception 'measurements of rough openings only grow: a mistake is put right by measuring again'
        using errcode = 'restrict_violation';
end $$;

-- The bytes drawn for words that are gone go too: with them whoever guesses the words could see that the guess is right.
create function seals_only_grow() returns trigger language plpgsql as $$
begin
    if tg_op = 'UPDATE' and to_jsonb(new) - 'nonce' = to_jsonb(old) - 'nonce' and new.nonce = decode(repeat('00', 16), 'hex')
        and exists (
            select from history_words_gone gone join person_taken_away act on act.id = gone.act_id
            where gone.change_id = old.change_id and act.made_in = pg_current_xact_id()::text::bigint
                and act.at = now())
    then
        return new;
    end if;
    raise exception '% only grows: a mistake is put right by a later entry', tg_table_name using errcode = 'restrict_violation';
end $$;
drop trigger only_grows on history_seal;
create trigger only_grows before update or delete on history_seal for each row execute function seals_only_grow();
create trigger only_grows before update or delete on history_words_gone for each row execute function seals_only_grow();
