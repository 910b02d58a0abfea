-- When somebody else set a person's password. Until the person has chosen one of their own, nothing else opens to them, and after a week
-- it lets nobody in. Nothing: they chose it themselves, or it is of before this was asked.
alter table person add column password_given_at timestamptz;

-- How many photos someone has sent within a day is counted with each.
create index photo_by_person on photo (person_id, received_at);
