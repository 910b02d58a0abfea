package drylap.sites;

import org.jspecify.annotations.Nullable;

/**
 * What the window schedule says of an opening beyond its design: for people to read, the planner does not.
 *
 * @param mark as the schedule writes it
 * @param sillHeightMm of the rough sill above its floor
 * @param xMm along the wall, from where the schedule counts
 * @param headDetail the sheet and number of its drawing, as are the next two; blank where none is given
 */
public record OpeningNote(
        String mark,
        @Nullable Integer sillHeightMm,
        @Nullable Integer xMm,
        String headDetail,
        String jambDetail,
        String sillDetail,
        String remarks) {}
