package drylap.planning.solver;

import static org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore.ONE_HARD;
import static org.optaplanner.core.api.score.stream.Joiners.equal;

import drylap.kernel.Task;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.bi.BiConstraintStream;
import org.optaplanner.core.api.score.stream.uni.UniConstraintStream;

/** Hard rules between tasks: what must be through first, and how long may lie between. */
final class OrderConstraints {
    Constraint[] all(ConstraintFactory factory) {
        return new Constraint[] {
            testBeforeCure(factory),
            testBeforeCureOfAFinishedInstall(factory),
            wrapBeforeCourseIsReady(factory),
            wrapBeforeCourseBelow(factory),
            cladBeforeCourseIsReady(factory),
            cladBeforeCourseBelow(factory),
            apronWaitsTooLong(factory),
            openingStaysBareTooLong(factory),
            finishedInstallWaitsTooLong(factory)
        };
    }

    Constraint testBeforeCure(ConstraintFactory factory) {
        return planned(factory, Task.TEST)
                .join(all(factory, Task.INSTALL), equal(Stop::opening))
                .filter((test, install) ->
                        install.unfinishedAt(test.start() - test.what().limits().cure()))
                .penalize(ONE_HARD)
                .asConstraint("Test before the sealant has cured");
    }

    Constraint testBeforeCureOfAFinishedInstall(ConstraintFactory factory) {
        return planned(factory, Task.TEST)
                .filter(test -> test.start() < test.what().earliest())
                .penalize(ONE_HARD)
                .asConstraint("Test before the sealant of a finished install has cured");
    }

    Constraint wrapBeforeCourseIsReady(ConstraintFactory factory) {
        return sameCourse(planned(factory, Task.WRAP), factory)
                .filter((wrap, other) -> other.is(Task.INSTALL) || other.is(Task.TEST))
                .filter((wrap, other) -> other.unfinishedAt(wrap.start()))
                .penalize(ONE_HARD)
                .asConstraint("Wrap before installs and tests of the course");
    }

    Constraint wrapBeforeCourseBelow(ConstraintFactory factory) {
        return below(factory, Task.WRAP).asConstraintNamed("Wrap before the course below");
    }

    Constraint cladBeforeCourseIsReady(ConstraintFactory factory) {
        return sameCourse(planned(factory, Task.CLAD), factory)
                .filter((clad, other) -> !other.is(Task.CLAD))
                .filter((clad, other) -> other.unfinishedAt(clad.start()))
                .penalize(ONE_HARD)
                .asConstraint("Cladding before the course is ready");
    }

    Constraint cladBeforeCourseBelow(ConstraintFactory factory) {
        return below(factory, Task.CLAD).asConstraintNamed("Cladding before the course below");
    }

    Constraint apronWaitsTooLong(ConstraintFactory factory) {
        return sameCourse(planned(factory, Task.WRAP), factory)
                .filter((wrap, install) -> install.is(Task.INSTALL) && install.planned())
                .filter((wrap, install) ->
                        wrap.end() > install.end() + wrap.what().limits().apron())
                .penalize(ONE_HARD)
                .asConstraint("Apron waits too long for its wrap");
    }

    Constraint openingStaysBareTooLong(ConstraintFactory factory) {
        return planned(factory, Task.WRAP)
                .filter(wrap -> !wrap.what().barrierFirst())
                .join(CrewConstraints.planned(factory), equal(Stop::opening))
                .filter((wrap, install) -> install.is(Task.INSTALL))
                .filter((wrap, install) ->
                        wrap.end() > install.end() + wrap.what().limits().bare())
                .penalize(ONE_HARD)
                .asConstraint("Opening stays bare too long");
    }

    Constraint finishedInstallWaitsTooLong(ConstraintFactory factory) {
        return planned(factory, Task.WRAP)
                .filter(wrap -> wrap.end() > wrap.what().latestEnd())
                .penalize(ONE_HARD)
                .asConstraint("Finished install waits too long for its wrap");
    }

    private record Below(BiConstraintStream<Stop, Stop> pairs) {
        Constraint asConstraintNamed(String name) {
            return pairs.penalize(ONE_HARD).asConstraint(name);
        }
    }

    private static Below below(ConstraintFactory factory, Task kind) {
        return new Below(planned(factory, kind)
                .join(
                        all(factory, kind),
                        equal(Stop::facade),
                        equal(stop -> stop.what().below(), Stop::level))
                .filter((upper, lower) -> lower.unfinishedAt(upper.start())));
    }

    private static BiConstraintStream<Stop, Stop> sameCourse(
            UniConstraintStream<Stop> stream, ConstraintFactory factory) {
        return stream.join(Stop.class, equal(Stop::facade), equal(Stop::level));
    }

    private static UniConstraintStream<Stop> planned(ConstraintFactory factory, Task kind) {
        return CrewConstraints.planned(factory).filter(stop -> stop.is(kind));
    }

    private static UniConstraintStream<Stop> all(ConstraintFactory factory, Task kind) {
        return factory.forEach(Stop.class).filter(stop -> stop.is(kind));
    }
}
