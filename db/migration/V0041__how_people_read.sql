-- How someone reads. Nothing chosen: English and millimetres, until the first sign-in brings what the browser asks for.
alter table person
    add column language text constraint person_language check (language in ('en', 'es')),
    add column ruler    text constraint person_ruler check (ruler in ('in', 'mm'));
