-- Strips that are longer than a roll are made of pieces that lap.
alter table rule_value drop constraint rule_value_rule;
alter table rule_value add constraint rule_value_rule check (rule in (
    'rain_p', 'rain_mm', 'beyond_rain_p', 'rain_persistence', 'wetting_l_m2', 'drying_h', 'install_min_c',
    'install_gust_m_s', 'wrap_gust_m_s', 'dusk_margin_min', 'skin_min', 'cure_before_test_h', 'apron_max_days', 'bare_max_days',
    'apron_uv_days', 'barrier_uv_days', 'cover_min', 'cover_lets_in', 'lee_share', 'storey_m', 'upwind_slope',
    'obstacle_m', 'wall_factor', 'rain_deposition', 'rain_admittance', 'rain_warning_min', 'duration_best',
    'duration_worst', 'delivery_worst_days', 'weather_cell_km', 'apron_width_mm',
    'jamb_flashing_mm', 'head_flashing_mm', 'head_past_jambs_mm', 'pan_width_mm', 'pan_turn_up_mm', 'strip_roll_m', 'strip_lap_mm', 'bead_mm',
    'cartridge_ml', 'fastener_spacing_mm', 'rough_clearance_mm', 'rough_least_gap_mm',
    'rough_most_gap_mm', 'rough_square_mm', 'plumb_2ft_mm', 'plumb_4ft_mm', 'take_off_waste', 'weight_late_handover', 'weight_crew_days',
    'weight_travel', 'weight_setup', 'weight_overtime', 'weight_open_course', 'weight_rain_risk', 'weight_changed'));
alter table rule_change drop constraint rule_change_rule;
alter table rule_change add constraint rule_change_rule check (rule in (
    'rain_p', 'rain_mm', 'beyond_rain_p', 'rain_persistence', 'wetting_l_m2', 'drying_h', 'install_min_c',
    'install_gust_m_s', 'wrap_gust_m_s', 'dusk_margin_min', 'skin_min', 'cure_before_test_h', 'apron_max_days', 'bare_max_days',
    'apron_uv_days', 'barrier_uv_days', 'cover_min', 'cover_lets_in', 'lee_share', 'storey_m', 'upwind_slope',
    'obstacle_m', 'wall_factor', 'rain_deposition', 'rain_admittance', 'rain_warning_min', 'duration_best',
    'duration_worst', 'delivery_worst_days', 'weather_cell_km', 'apron_width_mm',
    'jamb_flashing_mm', 'head_flashing_mm', 'head_past_jambs_mm', 'pan_width_mm', 'pan_turn_up_mm', 'strip_roll_m', 'strip_lap_mm', 'bead_mm',
    'cartridge_ml', 'fastener_spacing_mm', 'rough_clearance_mm', 'rough_least_gap_mm',
    'rough_most_gap_mm', 'rough_square_mm', 'plumb_2ft_mm', 'plumb_4ft_mm', 'take_off_waste', 'weight_late_handover', 'weight_crew_days',
    'weight_travel', 'weight_setup', 'weight_overtime', 'weight_open_course', 'weight_rain_risk', 'weight_changed'));
