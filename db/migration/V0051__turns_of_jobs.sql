-- People take turns, and so do folders and sites: of the jobs that wait, the first of each asker and of each matter comes before anybody's second,
-- and of those the one whose last turn is longest ago. Nothing where nobody asked, and for jobs of before.
alter table job
    add column asker text,
    add column about text;
create index job_under_way on job (id) where state in ('queued', 'running');
create index job_of_asker on job (asker, started_at);
create index job_about on job (about, started_at);
