package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One cell is spoilt, and one message says where, what, and what would be accepted. */
class BadCellTests {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        openings.csv | O2,900  | O2,-900  | openings.csv:3 width_mm: is negative (-900) – a whole number of mm from 100 to 20000 is accepted
        openings.csv | O2,900  | O2,99    | openings.csv:3 width_mm: is too small (99) – a whole number of mm from 100 to 20000 is accepted
        openings.csv | O2,900  | O2,20001 | openings.csv:3 width_mm: is too large (20001) – a whole number of mm from 100 to 20000 is accepted
        openings.csv | O2,900  | O2,900.5 | openings.csv:3 width_mm: is not a whole number (900.5) – a whole number of mm from 100 to 20000 is accepted
        openings.csv | O2,900  | O2,      | openings.csv:3 width_mm: is blank – a whole number of mm from 100 to 20000 is accepted
        openings.csv | W,1,O2  | W,0,O2   | openings.csv:3 level: is too small (0) – a whole number from 1 to 200 is accepted
        openings.csv | W,1,O2  | N,1,O2   | openings.csv:3 facade: refers to no facade (N) – a facade of facades.csv is accepted
        openings.csv | S1,W,1,O2 | S9,W,1,O2 | openings.csv:3 site: refers to no site (S9) – a site of sites.csv is accepted
        openings.csv | wood    | steel    | openings.csv:3 frame: is unknown (steel) – one of wood, aluminum, vinyl, fiberglass is accepted
        openings.csv | B1      | C        | openings.csv:3 method: is unknown (C) – one of A, A1, B, B1 is accepted
        openings.csv | barrier | open     | openings.csv:3 approach: is unknown (open) – one of drainage, barrier is accepted
        openings.csv | tuck    | ''       | openings.csv:3 second_layer: is blank – one of none, tuck, drain-between is accepted
        openings.csv | none,2026-04-13 | none,2026-02-30 | openings.csv:2 delivered_on: is not a date (2026-02-30) – a date such as 2026-04-13, from the year 2000 to 2099, is accepted
        openings.csv | none,2026-04-13 | none,13.4.2026 | openings.csv:2 delivered_on: is not a date (13.4.2026) – a date such as 2026-04-13, from the year 2000 to 2099, is accepted
        openings.csv | yes     | maybe    | openings.csv:2 water_test: is neither yes nor no (maybe) – yes, no or blank is accepted
        openings.csv | yes,2,4 | yes,2,10 | openings.csv:2 done: is too large (10) – a whole number from 0 to 9 is accepted
        openings.csv | yes,2   | yes,101  | openings.csv:2 priority: is too large (101) – a whole number from 0 to 100 is accepted
        openings.csv | T15:30-07:00 | T15:30 | openings.csv:2 done_at: is not a time with an offset (2026-04-12T15:30) – a time such as 2026-04-13T07:00-07:00, from the year 2000 to 2099, is accepted
        openings.csv | yes,2,4 | yes,2,   | openings.csv:2 done_at: is given though nothing is done (2026-04-12T15:30-07:00) – a blank cell, or a number in done, is accepted
        sites.csv    | 47.2    | 91       | sites.csv:2 latitude: is too large (91) – a number of degrees from -90 to 90 is accepted
        sites.csv    | 47.2    | NaN      | sites.csv:2 latitude: is not a number (NaN) – a number of degrees from -90 to 90 is accepted
        sites.csv    | 47.2    | '47 2'   | sites.csv:2 latitude: is not a number (47 2) – a number of degrees from -90 to 90 is accepted
        sites.csv    | America/Los_Angeles | PST8 | sites.csv:2 time_zone: is not a known time zone (PST8) – an IANA time zone such as America/Los_Angeles is accepted
        sites.csv    | II      | V        | sites.csv:2 terrain: is unknown (V) – one of I, II, III, IV is accepted
        sites.csv    | Quay house | ' Quay' | sites.csv:2 name: has spaces around it ( Quay) – a name of 1 to 100 characters without spaces around it is accepted
        facades.csv  | 270     | 361      | facades.csv:2 azimuth_deg: is too large (361) – a number of degrees from 0 to 360 is accepted
        facades.csv  | 2026-04-17 | soon  | facades.csv:2 handover_due: is not a date (soon) – a date such as 2026-04-13, from the year 2000 to 2099, is accepted
        crews.csv    | siding  | roofing  | crews.csv:3 trade: is unknown (roofing) – one of window, tester, wrap, siding is accepted
        crews.csv    | A;B1    | A;B2     | crews.csv:2 methods: holds an unknown method (A;B2) – blank for all, or a list such as A1;B1 of A, A1, B, B1 is accepted
        shifts.csv   | C2      | C9       | shifts.csv:3 crew: refers to no crew (C9) – a crew of crews.csv is accepted
        shifts.csv   | 07:00,15:30,, | 7am,15:30,, | shifts.csv:3 start: is not a time of day (7am) – a time such as 07:30, from 00:00 to 23:59, is accepted
        shifts.csv   | 07:00,15:30,, | 16:00,15:30,, | shifts.csv:3 end: is not after the start (15:30) – a time after 16:00 is accepted
        shifts.csv   | 17:00   | 15:00    | shifts.csv:2 overtime_until: is before the end (15:00) – blank, or a time from 15:30 on is accepted
        shifts.csv   | 11:30,12:00 | 06:30,12:00 | shifts.csv:2 break_start: is before the shift (06:30) – a break within 07:00 to 15:30 is accepted
        shifts.csv   | 11:30,12:00 | 15:00,16:00 | shifts.csv:2 break_end: is after the shift (16:00) – a break within 07:00 to 15:30 is accepted
        shifts.csv   | 11:30,12:00 | 11:30,11:30 | shifts.csv:2 break_end: is not after the break's start (11:30) – a break within 07:00 to 15:30 is accepted
        shifts.csv   | 11:30,12:00 | 11:30,   | shifts.csv:2 break_end: is blank though the break has a start – a break within 07:00 to 15:30 is accepted
        shifts.csv   | 11:30,12:00 | ,12:00   | shifts.csv:2 break_start: is blank though the break has an end – a break within 07:00 to 15:30 is accepted
        travel.csv   | S1,12   | S7,12    | travel.csv:2 to: refers to no site and no crew (S7) – a site of sites.csv or a crew of crews.csv is accepted
        travel.csv   | S1,12   | C1,12    | travel.csv:2 minutes: is not 0 though the leg stays at one place (12) – 0 is accepted
        forecast.csv | 0.6     | 1e400    | forecast.csv:3 rain_mm: is not finite (1e400) – a number of mm from 0 to 500 is accepted
        forecast.csv | 0.6     | -0.6     | forecast.csv:3 rain_mm: is negative (-0.6) – a number of mm from 0 to 500 is accepted
        forecast.csv | 0.7     | 70       | forecast.csv:3 rain_probability: is too large (70) – a number from 0 to 1 is accepted
        forecast.csv | T08:00  | T10:00   | forecast.csv:3 hour_start: leaves a gap in the site's hours (2026-04-13T10:00-07:00) – the hour from 2026-04-13T08:00-07:00 is accepted
        forecast.csv | T08:00  | T07:00   | forecast.csv:3 hour_start: stands for an hour of line 2 already (2026-04-13T07:00-07:00) – the hour from 2026-04-13T08:00-07:00 is accepted
        forecast.csv | T08:00  | T07:30   | forecast.csv:3 hour_start: overlaps the hour of line 2 (2026-04-13T07:30-07:00) – the hour from 2026-04-13T08:00-07:00 is accepted
        labour.csv   | wrap,*  | wrap,A   | labour.csv: has no row for wrap of method B1 – a row of that task and method, or of method *, is accepted
        labour.csv   | wrap,*,8,2 | wrap,*,0,0 | labour.csv:3 fixed_min: makes a task that takes no time, with per_m2_min 0 (0) – a task that takes time is accepted
        labour.csv   | 10.50   | 1.05e1   | labour.csv:2 per_m2_min: is not a plain decimal number (1.05e1) – a number of minutes from 0 to 10000 is accepted
        labour.csv   | wrap,*  | paint,*  | labour.csv:3 task: is unknown (paint) – one of install, test, wrap, clad is accepted
        labour.csv   | wrap,*  | wrap,    | labour.csv:3 method: is blank – one of A, A1, B, B1 or * for any is accepted
        rules.csv    | drying_h,4 | drying_h,73 | rules.csv:2 value: is too large (73) – a number of h from 0 to 72 is accepted
        rules.csv    | drying_h,4 | weight_travel,1.5 | rules.csv:2 value: is not a whole number (1.5) – a whole number of per minute from 0 to 1000000 is accepted
        published.csv | O2,install | O7,install | published.csv:2 opening: refers to no opening (O7) – an opening of openings.csv is accepted
        published.csv | O2,install | O2,test | published.csv:2 task: is not needed at opening O2 (test) – one of install, wrap, clad is accepted
        published.csv | O2,install | O2,clad | published.csv:2 task: is not of the trade of crew C1 (clad) – install is accepted
        published.csv | W,1,O2 | W,2,O2 | published.csv:2 level: is not where opening O2 is (2) – level 1 is accepted
        published.csv | T09:20 | T08:00 | published.csv:2 end: is not after the start (2026-04-13T08:00-07:00) – a time after 2026-04-13T08:00-07:00 is accepted
        published.csv | C1,2026-04-13 | C1,2026-04-14 | published.csv:2 date: is not the date of the start (2026-04-14) – the date of 2026-04-13T08:00-07:00 is accepted
        published.csv | T09:20 | T17:01 | published.csv:2 pinned: holds a visit outside the shifts of crew C1 (yes) – a pin within a shift is accepted
        """)
    void is_named_with_its_place_and_what_would_be_accepted(String file, String from, String to, String message) {
        assertThat(new SmallFolder().change(file, from, to).problems()).containsExactly(message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        sites.csv    | S1,Other,47,-124,America/Los_Angeles,II | sites.csv:3 site: stands for a site of line 2 already (S1) – each site once is accepted
        facades.csv  | S1,W,90, | facades.csv:3 facade: stands for a facade of line 2 already (W) – each facade once is accepted
        openings.csv | S1,W,2,O1,900,1200,wood,B1,barrier,none,2026-04-13,,,, | openings.csv:4 opening: stands for an opening of line 2 already (O1) – each opening once is accepted
        crews.csv    | C1,wrap,,47,-124,America/Los_Angeles | crews.csv:4 crew: stands for a crew of line 2 already (C1) – each crew once is accepted
        crews.csv    | S1,wrap,,47,-124,America/Los_Angeles | crews.csv:4 crew: is the id of a site too (S1) – an id of its own is accepted
        shifts.csv   | C1,2026-04-13,12:00,18:00,,, | shifts.csv:4 date: stands for a shift of this crew and date of line 2 already (2026-04-13) – each shift of this crew and date once is accepted
        travel.csv   | C1,S1,9 | travel.csv:4 to: stands for a leg between these places of line 2 already (S1) – each leg between these places once is accepted
        labour.csv   | install,*,1,1,1,1,1,1 | labour.csv:5 method: stands for a row of this task and method of line 2 already (*) – each row of this task and method once is accepted
        rules.csv    | drying_h,5 | rules.csv:3 rule: stands for a rule of line 2 already (drying_h) – each rule once is accepted
        published.csv | C1,2026-04-13,2,S1,W,1,O2,install,2026-04-13T10:00-07:00,2026-04-13T11:00-07:00, | published.csv:3 opening: stands for a visit of this opening and task of line 2 already (O2) – each visit of this opening and task once is accepted
        """)
    void a_second_of_a_kind_is_named_with_the_line_of_the_first(String file, String line, String message) {
        assertThat(new SmallFolder().append(file, line).problems()).containsExactly(message);
    }
}
