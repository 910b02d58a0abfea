package drylap.windowschedule;

/**
 * One thing wrong with a row.
 *
 * @param row as the file counts it
 * @param column its letters; blank where the sheet has no column for it
 * @param value as it stands in the cell; blank where nothing does
 */
public record CellFault(int row, Field field, String column, String wrong, String value, String accepted) {}
