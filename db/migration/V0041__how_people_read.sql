-- How someone reads. Nothing chosen: English and millimetres, until the first sign-in brings what the browser asks for.
alter table person
    add column language text constraint person_language check (language in ('en', 'es')),
    add column ruler    text constraint person_ruler check (ruler in ('in', 'mm'));

-- A crew's calendar is told once for each way of reading that its links have: what was told in one language stays told in it.
alter table calendar_link
    add column language text not null default 'en' check (language in ('en', 'es')),
    add column ruler    text not null default 'mm' check (ruler in ('in', 'mm'));
alter table calendar_entry drop constraint calendar_entry_crew_fkey, drop constraint calendar_entry_pkey;
alter table calendar
    add column language text not null default 'en' check (language in ('en', 'es')),
    add column ruler    text not null default 'mm' check (ruler in ('in', 'mm')),
    drop constraint calendar_pkey,
    add primary key (crew, language, ruler);
alter table calendar_entry
    add column language text not null default 'en',
    add column ruler    text not null default 'mm',
    add primary key (crew, language, ruler, date, site, stay),
    add foreign key (crew, language, ruler) references calendar;
