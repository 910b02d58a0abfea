import type { Block, SheetDay, Week } from './view-records';

/** One block of the sheet, by its crew, its day and its number in that day. */
export interface Chosen {
  crew: string;
  date: string;
  block: number;
}

export function same(a: Chosen | undefined, b: Chosen | undefined): boolean {
  return !!a && !!b && a.crew === b.crew && a.date === b.date && a.block === b.block;
}

export function blockAt(week: Week, at: Chosen | undefined): Block | undefined {
  if (!at) return undefined;
  return week.crews.find((c) => c.crew === at.crew)?.days.find((d) => d.date === at.date)?.blocks[at.block];
}

/** The blocks that are on the table now, crew by crew. */
export function rowsOf(week: Week, days: SheetDay[]): Chosen[][] {
  const dates = new Set(days.map((d) => d.date));
  return week.crews
    .map((c) =>
      c.days
        .filter((d) => dates.has(d.date))
        .flatMap((d) => d.blocks.map((_, block) => ({ crew: c.crew, date: d.date, block }))),
    )
    .filter((row) => row.length > 0);
}

/** Where an arrow key leads: along the crew's days, or to the same day of the crew above or below. */
export function neighbour(rows: Chosen[][], at: Chosen | undefined, key: string): Chosen | undefined {
  const row = rows.findIndex((r) => r.some((b) => same(b, at)));
  if (!at || row < 0) return undefined;
  const column = rows[row]?.findIndex((b) => same(b, at)) ?? 0;
  if (key === 'ArrowRight') return rows[row]?.[column + 1];
  if (key === 'ArrowLeft') return rows[row]?.[column - 1];
  const other = key === 'ArrowDown' ? rows[row + 1] : key === 'ArrowUp' ? rows[row - 1] : undefined;
  return other?.find((b) => b.date >= at.date) ?? other?.at(-1);
}
