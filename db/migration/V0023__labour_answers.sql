-- What a scheduler answered to install minutes that the log suggests. Of a method the newest answer that is not a refusal
-- counts: accepted, the minutes of the labour table as imported are multiplied by the factor; withdrawn, they are as imported
-- again. Answers are only ever added.
create table labour_answer (
    id        bigint generated always as identity primary key,
    folder_id bigint      not null references job_folder on delete cascade,
    method    text        not null constraint labour_answer_method check (method in ('A', 'A1', 'B', 'B1')),
    answer    text        not null constraint labour_answer_answer check (answer in ('accepted', 'declined', 'withdrawn')),
    factor    numeric     not null check (factor between 0.25 and 4),
    openings  int         not null check (openings >= 0),
    person_id bigint      not null,
    person    text        not null,
    at        timestamptz not null
);
create index labour_answer_by_folder on labour_answer (folder_id, method, id desc);

create function labour_answers_only_grow() returns trigger language plpgsql as $$
begin
    -- a whole job folder may go, and its answers with it
    if tg_op = 'DELETE' and not exists (select from job_folder where id = old.folder_id) then
        return old;
    end if;
    raise exception 'answers on labour only grow: a mistake is put right by a later answer' using errcode = 'restrict_violation';
end $$;

create trigger only_grows before update or delete on labour_answer
    for each row execute function labour_answers_only_grow();
