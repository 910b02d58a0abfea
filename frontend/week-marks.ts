import { html, type TemplateResult } from 'lit';
import { place } from './shared';
import type { Say } from './speech';
import type { CrewDay, Span } from './view-records';
import type { Carried } from './week-drag';
import { clock } from './week-words';

/** How many visits of a crew's day the filter leaves out. */
export function hiddenMark(day: CrewDay, say: Say): TemplateResult {
  const words = say('{0} more, filtered out', day.hidden);
  return html`<span class=${day.blocks.length ? 'hidden' : 'free'} title=${words}>
    <span aria-hidden="true">+${day.hidden}</span><span class="unseen">${words}</span>
  </span>`;
}

/** The visit in somebody's hand, where it would be put down. */
export function carriedMark(carried: Carried, shown: Span): TemplateResult {
  const where = place({ from: carried.minute, until: carried.minute + carried.minutes }, shown);
  return html`<span class="carried ${carried.task}" style=${where ?? ''}>${clock(carried.minute)}</span>`;
}
