-- What the rain call may be told: minutes to cover an opening, what gets in behind a cover, what a wall in the lee gets.
alter table rule_value drop constraint rule_value_rule;
alter table rule_value add constraint rule_value_rule check (rule in (
    'rain_p', 'rain_mm', 'wetting_l_m2', 'drying_h', 'install_min_c', 'install_gust_m_s', 'wrap_gust_m_s',
    'dusk_margin_min', 'skin_min', 'cure_before_test_h', 'apron_max_days', 'bare_max_days', 'apron_uv_days',
    'barrier_uv_days', 'cover_min', 'cover_lets_in', 'lee_share', 'weight_late_handover', 'weight_crew_days',
    'weight_travel', 'weight_setup', 'weight_overtime', 'weight_open_course', 'weight_rain_risk', 'weight_changed'));
