create table trial (id text primary key);
