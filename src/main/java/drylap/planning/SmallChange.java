package drylap.planning;

import drylap.assembly.Method;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.speech.Part;
import drylap.speech.Saying;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A change of a job folder that may make room for a task. */
public sealed interface SmallChange {
    /** The folder with the change. */
    JobFolder applyTo(JobFolder folder);

    Saying saying();

    /** The change in words. */
    default String words() {
        return saying().words();
    }

    /** Nothing but planning again. */
    record PlanAgain() implements SmallChange {
        @Override
        public JobFolder applyTo(JobFolder folder) {
            return folder;
        }

        @Override
        public Saying saying() {
            return Saying.of("planning again, with nothing changed");
        }
    }

    /** A crew may stay until {@code until} on a date. */
    record Overtime(CrewId crew, LocalDate date, LocalTime until) implements SmallChange {
        @Override
        public JobFolder applyTo(JobFolder folder) {
            return folder.withShifts(folder.shifts().stream()
                    .map(shift -> shift.crew().equals(crew) && shift.date().equals(date) ? longer(shift) : shift)
                    .toList());
        }

        private Shift longer(Shift s) {
            return new Shift(s.crew(), s.date(), s.start(), s.end(), s.breakStart(), s.breakEnd(), until, s.zone());
        }

        @Override
        public Saying saying() {
            return Saying.of("crew {0} may stay until {1} on {2}", crew, until, new Part.When(date));
        }
    }

    /** A window comes some days earlier. */
    record EarlierDelivery(OpeningId opening, int days) implements SmallChange {
        @Override
        public JobFolder applyTo(JobFolder folder) {
            return folder.withOpenings(folder.openings().stream()
                    .map(one -> one.id().equals(opening)
                            ? one.deliveredOn(one.deliveredOn().minusDays(days))
                            : one)
                    .toList());
        }

        @Override
        public Saying saying() {
            return Saying.of(
                    "the window of {0} is delivered {1, plural, one {# day} other {# days}} earlier",
                    opening.value(), days);
        }
    }

    /** One more day of a crew, with the hours of {@code like}. */
    record CrewDay(Shift like, LocalDate date) implements SmallChange {
        @Override
        public JobFolder applyTo(JobFolder folder) {
            return folder.withShifts(
                    Stream.concat(folder.shifts().stream(), Stream.of(day())).toList());
        }

        private Shift day() {
            return new Shift(
                    like.crew(),
                    date,
                    like.start(),
                    like.end(),
                    like.breakStart(),
                    like.breakEnd(),
                    like.overtimeUntil(),
                    like.zone());
        }

        @Override
        public Saying saying() {
            return Saying.of(
                    "crew {0} comes on {1} as well, from {2} to {3}",
                    like.crew(), new Part.When(date), like.start(), like.end());
        }
    }

    /** A window crew learns a method. */
    record Training(CrewId crew, Method method) implements SmallChange {
        @Override
        public JobFolder applyTo(JobFolder folder) {
            List<Crew> crews = folder.crews().stream()
                    .map(one -> one.id().equals(crew) ? trained(one) : one)
                    .toList();
            return folder.withCrews(crews);
        }

        private Crew trained(Crew one) {
            Set<Method> methods = new HashSet<>(one.methods());
            methods.add(method);
            return new Crew(one.id(), one.trade(), methods, one.base(), one.zone(), one.people());
        }

        @Override
        public Saying saying() {
            return Saying.of("crew {0} is trained for method {1}", crew, method.code());
        }
    }

    /** A limit of a site is a day longer: a matter for the maker's data sheet, never a recommendation. */
    record LongerLimit(SiteId site, Rule rule) implements SmallChange {
        @Override
        public JobFolder applyTo(JobFolder folder) {
            double longer = folder.rules().at(site).value(rule) + 1;
            return folder.withRules(folder.rules().with(site, rule, longer));
        }

        @Override
        public Saying saying() {
            return Saying.of(
                    "with {0} a day longer it would fit; whether it may be is for the maker's data sheet to say, "
                            + "and this is no recommendation",
                    Saying.of(rule == Rule.APRON_MAX_DAYS ? "the limit of the apron" : "the limit without a barrier"));
        }
    }
}
