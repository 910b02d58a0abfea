-- Tasks besides the install that were finished when the folder was imported.
alter table opening add column finished text[] not null default '{}'
    constraint opening_finished check (finished <@ array['test', 'wrap', 'clad']);

-- What a scheduler published: from then on everybody works by that plan. Each publication follows the one that its person saw,
-- and nothing is followed twice: of two who publish at once, one is told so. Publications are never changed.
create table publication (
    id           bigint generated always as identity primary key,
    folder_id    bigint      not null references job_folder on delete cascade,
    plan_id      bigint      not null,
    follows      bigint,
    published_at timestamptz not null,
    person_id    bigint,
    person       text        not null,
    foreign key (folder_id, plan_id) references plan (folder_id, id) on delete cascade,
    unique (folder_id, id),
    unique nulls not distinct (folder_id, follows),
    foreign key (folder_id, follows) references publication (folder_id, id) on delete cascade
);

create trigger only_grows before update on publication
    for each row execute function log_only_grows();

-- Visits that may not move: the next plans keep crew, day and start of what was published, or moved by hand, for them.
create table pin (
    folder_id bigint      not null,
    opening   text        not null,
    task      text        not null constraint pin_task check (task in ('install', 'test', 'wrap', 'clad')),
    crew      text        not null,
    date      date        not null,
    starts_at timestamptz not null,
    ends_at   timestamptz not null check (ends_at > starts_at),
    person    text        not null,
    at        timestamptz not null,
    primary key (folder_id, opening, task),
    foreign key (folder_id, opening) references opening on delete cascade,
    foreign key (folder_id, crew) references crew on delete cascade
);

