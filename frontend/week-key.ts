import { html, type TemplateResult } from 'lit';
import { nail, SKY_WORDS, TASK_CODES, taskMark, TASKS } from './shared';
import type { Say } from './speech';
import type { SkySpan } from './view-records';

/** What the marks of a week sheet mean. */
export function weekKey(say: Say): TemplateResult {
  return html`${TASK_CODES.map((task) => html`<span class="key">${taskMark(task)} ${say(TASKS[task].name)}</span>`)}
    ${(Object.keys(SKY_WORDS) as SkySpan['kind'][]).map(
      (kind) =>
        html`<span class="key"
          ><span class="swatch"><span class="sky ${kind}" style="inset:0"></span></span>${say(SKY_WORDS[kind])}</span
        >`,
    )} <span class="key"><svg class="nail" viewBox="0 0 16 16" aria-hidden="true">${nail}</svg>${say('pinned')}</span>`;
}
