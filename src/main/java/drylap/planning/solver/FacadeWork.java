package drylap.planning.solver;

import drylap.sites.Facade;
import java.util.ArrayList;
import java.util.List;

/** A facade, its courses from below, and the minute at which its due date ends (NEVER without one). */
final class FacadeWork {
    final int index;
    final Facade facade;
    final int site;
    final int due;
    final List<CourseWork> courses = new ArrayList<>();

    FacadeWork(int index, Facade facade, int site, int due) {
        this.index = index;
        this.facade = facade;
        this.site = site;
        this.due = due;
    }
}
