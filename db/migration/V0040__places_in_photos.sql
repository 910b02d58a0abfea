-- Whether photos of a site keep what the camera wrote about the place; a site that is not here does not.
create table site_photo_place (
    folder_id bigint  not null,
    site      text    not null,
    kept      boolean not null,
    primary key (folder_id, site),
    foreign key (folder_id, site) references site on delete cascade
);
