package drylap.planning;

/** A visit of the plan that people already have; a pinned one may not move. */
public record PublishedVisit(Visit visit, boolean pinned) {}
