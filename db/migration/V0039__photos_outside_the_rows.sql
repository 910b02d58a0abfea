-- Bytes may lie in a folder of files instead of in the row: then content is null, and the file is named by its digest. A row
-- whose content is not yet moved keeps it until the file is safely on disk.
alter table stored_file alter column content drop not null;
alter table stored_file add column size_bytes int;
update stored_file set size_bytes = length(content);
alter table stored_file alter column size_bytes set not null;
create index stored_file_in_row on stored_file (sha256) where content is not null;

-- The folder that holds this database's files says so with this mark. Once claimed, Drylap starts with that folder only: files
-- of another database, or none at all, would be taken for ours.
create table file_folder (
    the_only   boolean primary key default true check (the_only),
    mark       uuid        not null,
    claimed_at timestamptz
);
insert into file_folder (mark) values (gen_random_uuid());

-- A photo is looked at before it is kept: its size as it is seen, a small picture of it, and what the camera wrote beside the
-- picture is taken out, so its bytes are not those that were sent. Photos from before have no size until they were looked at;
-- one that cannot be decoded stays as it came.
alter table photo add column sent_sha256 text;
update photo set sent_sha256 = sha256;
alter table photo alter column sent_sha256 set not null;
alter table photo add column width_px int check (width_px > 0);
alter table photo add column height_px int check (height_px > 0);
alter table photo add column thumbnail_sha256 text references stored_file;
alter table photo add column undecodable boolean not null default false;
alter table photo add constraint photo_looked_at check (
    (width_px is null) = (thumbnail_sha256 is null) and (width_px is null) = (height_px is null));
create index photo_by_file on photo (sha256);
create index photo_by_thumbnail on photo (thumbnail_sha256);
create index photo_not_looked_at on photo (received_at) where width_px is null and not undecodable;
