import { TASKS } from './shared';
import type { Say } from './speech';
import type { Block, CrewRow, SkySpan } from './view-records';

/** A block as it is read aloud. */
export function blockInWords(row: CrewRow, block: Block, day: string, say: Say): string {
  const [one] = block.items;
  return [
    say(TASKS[block.task].name),
    say('{0}, {1}, level {2}', block.site, block.facade, block.level),
    block.items.length === 1 && one ? one.opening : say('{0} openings', block.items.length),
    say('crew {0}', row.crew),
    day,
    say('{0} to {1}', block.fromText, block.untilText),
    ...(block.pinned ? [say('pinned')] : []),
    ...(block.beyond ? [say('beyond the forecast')] : []),
  ].join(', ');
}

/** A site's rain of one day as it is read aloud. */
export function skyInWords(site: string, sky: SkySpan[], say: Say): string {
  const rain = sky.filter((s) => s.kind === 'rain').map((s) => say('{0} to {1}', clock(s.from), clock(s.until)));
  return rain.length ? say('{0}: rain {1}', site, rain.join(', ')) : say('{0}: no rain forecast', site);
}

export function clock(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}
