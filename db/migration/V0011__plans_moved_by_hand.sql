-- The planner breaks no hard rule. A plan of which a visit was moved by hand keeps what the day had broken of it before the move,
-- so that it can be mended one visit after the other; hard says how many rules that still are.
alter table plan add column by_hand boolean not null default false;
alter table plan drop constraint plan_hard_check;
alter table plan add constraint plan_hard check (hard = 0 or (by_hand and hard > 0));
