-- Which hold points a site works with; one that is not here has its usual setting.
create table site_hold_point (
    folder_id  bigint      not null,
    site       text        not null,
    hold_point text        not null constraint site_hold_point_kind check (hold_point in ('rough-opening', 'mock-up', 'spot-test')),
    applies    boolean     not null,
    primary key (folder_id, site, hold_point),
    foreign key (folder_id, site) references site on delete cascade
);

-- One thing that one person did about handing openings over, at one opening or a whole course. It is never changed: what
-- turns out wrong is returned by a later act. act_key comes from the page, so that the same act sent twice is one.
create table handoff_act (
    id              bigint generated always as identity primary key,
    act_key         uuid        not null unique,
    folder_id       bigint      not null,
    site            text        not null,
    kind            text        not null constraint handoff_act_kind check (kind in (
                        'hold-passed', 'hold-failed', 'released', 'accepted', 'returned', 'test-passed', 'test-failed')),
    hold_point      text constraint handoff_act_hold_point check (hold_point in ('rough-opening', 'mock-up', 'spot-test')),
    person_id       bigint      not null,
    person          text        not null,
    role            text        not null,
    crew            text,
    at              timestamptz not null,
    reason          text constraint handoff_act_reason check (reason in (
                        'apron-held', 'apron-short', 'reverse-lap', 'jamb-open', 'head-open', 'flap-open', 'out-of-true',
                        'barrier-torn', 'not-clean', 'photo-missing', 'other')),
    note            text        not null,
    leak_definition text constraint handoff_act_leak_definition check (leak_definition in (
                        'past-innermost-plane', 'half-ounce-inside', 'any-inside', 'any-inboard')),
    pressure_pa     int check (pressure_pa >= 0),
    minutes         int check (minutes > 0),
    foreign key (folder_id, site) references site on delete cascade,
    check ((kind in ('hold-passed', 'hold-failed')) = (hold_point is not null)),
    check ((kind = 'returned') = (reason is not null)),
    check ((kind in ('test-passed', 'test-failed')) = (leak_definition is not null)),
    check ((leak_definition is not null) = (pressure_pa is not null)),
    check ((leak_definition is not null) = (minutes is not null))
);
create index handoff_act_by_folder on handoff_act (folder_id, site);

-- An opening that an act is about, and the state in which it was seen then. last_mark is the progress log's entry, 0 for none.
create table handoff_entry (
    act_id    bigint not null references handoff_act on delete cascade,
    folder_id bigint not null,
    opening   text   not null,
    last_mark bigint not null,
    rating    text   not null constraint handoff_entry_rating check (rating in ('R0', 'R1', 'R2', 'R3')),
    state     text   not null,
    primary key (act_id, opening),
    foreign key (folder_id, opening) references opening on delete cascade
);
create index handoff_entry_by_opening on handoff_entry (folder_id, opening, act_id);

create table handoff_photo (
    act_id   bigint not null references handoff_act on delete cascade,
    photo_id uuid   not null,
    primary key (act_id, photo_id)
);

create function handoff_only_grows() returns trigger language plpgsql as $$
begin
    -- a whole job folder may go, and its acts with it
    if tg_op = 'DELETE' and not exists (select from job_folder where id = old.folder_id) then
        return old;
    end if;
    raise exception 'hand-off % only grows: a mistake is put right by a later act', tg_table_name
        using errcode = 'restrict_violation';
end $$;

create trigger only_grows before update or delete on handoff_act for each row execute function handoff_only_grows();
create trigger only_grows before update or delete on handoff_entry for each row execute function handoff_only_grows();

-- A day on which a crew of the follow-on trade comes to a site, said by that trade itself; withdrawn ones stay to be read.
create table crew_day_booking (
    id           bigint generated always as identity primary key,
    folder_id    bigint      not null,
    site         text        not null,
    crew         text        not null,
    date         date        not null,
    note         text        not null,
    person_id    bigint      not null,
    person       text        not null,
    at           timestamptz not null,
    withdrawn_at timestamptz,
    withdrawn_by text,
    foreign key (folder_id, site) references site on delete cascade,
    foreign key (folder_id, crew) references crew on delete cascade,
    check ((withdrawn_at is null) = (withdrawn_by is null))
);
create unique index crew_day_booked_once on crew_day_booking (folder_id, site, crew, date) where withdrawn_at is null;
