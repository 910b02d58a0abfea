-- A row of every kind that names somebody, by number, by name or in words; NAME, FORMER, ID and SITE are filled in by the test.
do $$
declare
    f bigint;
    p bigint;
    h bigint;
    a bigint;
begin
    insert into job_folder (name, imported_at) values ('away', now()) returning id into f;
    insert into site (folder_id, site, row_no, name, latitude, longitude, time_zone, terrain) values (f, 'SITE', 0, 'Site', 50, 5, 'UTC', 'II');
    insert into facade (folder_id, site, facade, row_no, azimuth_deg) values (f, 'SITE', 'N', 0, 0);
    insert into opening (folder_id, opening, row_no, site, facade, level, width_mm, height_mm, frame, method, approach, second_layer,
        delivered_on, water_test, priority, done)
        values (f, 'O1', 0, 'SITE', 'N', 1, 1000, 1000, 'vinyl', 'A', 'drainage', 'none', '2026-01-01', false, 0, 0);
    insert into crew (folder_id, crew, row_no, trade, methods, latitude, longitude, time_zone) values (f, 'W1', 0, 'window', '{}', 50, 5, 'UTC');
    insert into plan (folder_id, made_at, starts_at, horizon_end, hard, medium, soft) values (f, now(), now(), now(), 0, 0, 0) returning id into p;
    insert into change_log (at, person_id, person, site, what) values
        (now(), ID, 'FORMER', 'SITE', 'published plan 1'), (now(), ID, 'NAME', null, 'signed NAME out everywhere'),
        (now(), null, 'Somebody', null, 'added FORMER as window crew'), (now(), null, 'Somebody', null, 'changed nothing of hers');
    insert into step_mark (folder_id, opening, site, line, kind, person_id, person, marked_at, received_at, mark_key, note, reason) values
        (f, 'O1', 'SITE', 'sill', 'done', ID, 'FORMER', now(), now(), gen_random_uuid(), 'shims by ' || lower('NAME'), null),
        (f, 'O1', 'SITE', 'sill', 'undone', 0, 'Somebody', now(), now(), gen_random_uuid(), null, 'ask NAME, she knows');
    insert into handoff_act (act_key, folder_id, site, kind, person_id, person, role, at, note) values
        (gen_random_uuid(), f, 'SITE', 'released', ID, 'NAME', 'window-crew', now(), 'by NAME (and Somebody)');
    insert into crew_day_booking (folder_id, site, crew, date, note, person_id, person, at, withdrawn_at, withdrawn_by) values
        (f, 'SITE', 'W1', '2026-01-01', '', ID, 'NAME', now(), now(), 'NAME');
    insert into publication (folder_id, plan_id, published_at, person_id, person) values (f, p, now(), ID, 'NAME');
    insert into pin (folder_id, opening, task, crew, date, starts_at, ends_at, person, at) values
        (f, 'O1', 'install', 'W1', '2026-01-01', now(), now() + interval '1 hour', 'NAME', now());
    insert into absence (folder_id, crew, date, reason, person_id, person, at, withdrawn_at, withdrawn_by) values
        (f, 'W1', '2026-01-01', 'NAME is ill', ID, 'NAME', now(), now(), 'NAME');
    insert into rule_change (folder_id, rule, value, reason, person_id, person, at) values (f, 'rain_p', 0.3, 'NAME says so', ID, 'NAME', now());
    insert into forecast_choice (site, every_hours, person_id, person, chosen_at) values ('SITE', 6, ID, 'NAME', now());
    insert into labour_answer (folder_id, method, answer, factor, openings, person_id, person, at) values (f, 'A', 'declined', 1, 3, ID, 'NAME', now());
    insert into window_schedule (folder_id, site, file, added, changed, person_id, person, at) values (f, 'SITE', 'of NAME.csv', 1, 0, ID, 'NAME', now());
    insert into opening_note (folder_id, opening, mark, head_detail, jamb_detail, sill_detail, remarks) values (f, 'O1', 'm', '', '', '', 'call NAME');
    insert into rough_measurement (id, folder_id, opening, site, note, person_id, person, at) values
        (gen_random_uuid(), f, 'O1', 'SITE', 'NAME measured', ID, 'NAME', now());
    insert into calendar_link (crew, secret_hash, person_id, person, made_at) values ('W1', decode(md5('SITE') || md5('1'), 'hex'), ID, 'NAME', now());
    insert into api_token (person_id, name, secret_hash, scopes, made_by, made_at, expires_at) values
        (ID, 'phone of NAME', decode(md5('SITE') || md5('2'), 'hex'), array['openings:read'], 'NAME', now(), now() + interval '1 day');
    insert into hook (person_id, name, url, secret, kinds, made_by, made_at) values
        (ID, 'NAME', 'https://example.com/', repeat('s', 32), array['released'], 'NAME', now()) returning id into h;
    insert into hook_delivery (id, hook_id, act_id, kind, site, body, made_at, state) values
        (gen_random_uuid(), h, 1, 'released', 'SITE', '{"person":"NAME"}', now(), 'delivered');
    insert into kept_answer (sender, key, request_hash, at, status, content_type, body) values
        ('away', 'SITE', decode(md5('3') || md5('4'), 'hex'), now(), 200, 'application/json', convert_to('{"person":"NAME"}', 'UTF8'));
    insert into sign_in_failure (name, address, at) values ('SIGNIN', 'here', now());
    insert into job (kind, payload, state, asked_at, ended_at) values ('away', '{"by":"NAME"}', 'done', now(), now());
end $$
