import { TASKS } from './shared';
import type { Block, CrewRow, SkySpan } from './view-records';

/** A block as it is read aloud. */
export function blockInWords(row: CrewRow, block: Block, day: string): string {
  const count = block.items.length === 1 ? block.items[0]?.opening : `${block.items.length} openings`;
  return (
    `${TASKS[block.task].name}, ${block.site}, ${block.facade}, level ${block.level}, ${count}, crew ${row.crew}, ` +
    `${day}, ${block.fromText} to ${block.untilText}${block.pinned ? ', pinned' : ''}` +
    `${block.beyond ? ', beyond the forecast' : ''}`
  );
}

/** A site's rain of one day as it is read aloud. */
export function skyInWords(site: string, sky: SkySpan[]): string {
  const rain = sky.filter((s) => s.kind === 'rain').map((s) => `${clock(s.from)} to ${clock(s.until)}`);
  return rain.length ? `${site}: rain ${rain.join(', ')}` : `${site}: no rain forecast`;
}

export function clock(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}
