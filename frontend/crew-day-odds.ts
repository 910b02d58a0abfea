import { css, html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { oddsStyles, ofHundred } from './odds-shared';
import { shared } from './shared';
import { speechOf } from './speech';
import type { CrewDayCell, CrewDayOdds as Odds } from './view-records';

const WHOLE = 40;

/** Crews by days: how likely something planned for a crew-day is not done on it, as a figure over a bar. */
@customElement('crew-day-odds')
export class CrewDayOdds extends LitElement {
  static override styles = [
    shared,
    oddsStyles,
    css`
      /* what only ears are told lies within it too, or the page would grow as wide as the table */
      .scrolled {
        position: relative;
        width: fit-content;
        max-width: 100%;
        overflow-x: auto;
        border: 1px solid var(--line-strong);
        border-radius: 3px;
      }
      table {
        border-collapse: separate;
        border-spacing: 0;
        font: 400 0.82rem/1.2 var(--type-narrow);
      }
      th {
        padding: 0.25rem 0.5rem;
        font-weight: 500;
        text-align: start;
        white-space: nowrap;
        background: var(--sheet);
        border-block-end: 1px solid var(--line);
      }
      thead th {
        text-align: center;
      }
      thead th.climate {
        background:
          radial-gradient(circle at 3px 3px, var(--beyond) 0.8px, transparent 1.2px) 0 0 / 5px 5px,
          var(--sheet);
      }
      th span {
        background: var(--sheet);
      }
      tbody th,
      thead th:first-child {
        position: sticky;
        inset-inline-start: 0;
        z-index: 1;
        border-inline-end: 1px solid var(--line-strong);
      }
      td {
        position: relative;
        min-width: 2.9rem;
        height: 2.1rem;
        padding: 0;
        text-align: center;
        border-block-end: 1px solid var(--line);
        border-inline-end: 1px solid var(--line);
      }
      svg {
        position: absolute;
        inset: auto 4px 3px;
        width: calc(100% - 8px);
        height: 5px;
      }
      .ground {
        fill: var(--line);
      }
      .bar {
        fill: var(--wrap);
      }
      .likely {
        background: var(--alarm-wash);
      }
      .likely .bar {
        fill: var(--alarm);
      }
      td b {
        position: relative;
        inset-block-start: -3px;
        font-weight: 500;
        color: var(--ink);
      }
      .likely b {
        font-weight: 600;
        text-decoration: underline;
      }
      .none {
        color: var(--ink-soft);
      }
    `,
  ];

  @property({ attribute: false }) odds: Odds | undefined;

  override render(): TemplateResult | typeof nothing {
    const odds = this.odds;
    if (!odds || odds.crews.length === 0) return nothing;
    const say = speechOf(this);
    const climate = odds.days.some((day) => day.sky !== 'forecast');
    return html`<div
        class="scrolled"
        tabindex="0"
        role="group"
        aria-label=${say('Chance of 100 that a crew-day is not got through')}
      >
        <table>
          <thead>
            <tr>
              <th scope="col">${say('Crew')}</th>
              ${odds.days.map(
                (day) =>
                  html`<th scope="col" class=${day.sky === 'forecast' ? '' : 'climate'}>
                    <span>${day.label}</span>
                    ${day.sky === 'forecast' ? nothing : html`<span class="unseen">${say(', weather from the climate')}</span>`}
                  </th>`,
              )}
            </tr>
          </thead>
          <tbody>
            ${odds.crews.map(
              (row) =>
                html`<tr>
                  <th scope="row">${row.crew}</th>
                  ${row.cells.map((cell) => renderCell(cell))}
                </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <ul class="key">
        <li>${say('Chance of 100 that something planned for the day is not done on it; the bar is as long')}</li>
        <li><u>${say('underlined')}</u>: ${say('50 of 100 or more')}</li>
        <li>${say('–: not planned to come')}</li>
        ${climate ? html`<li><span class="climate"></span>${say('weather from the climate, not forecast')}</li>` : nothing}
      </ul>`;
  }
}

function renderCell(cell: CrewDayCell | null): TemplateResult {
  if (!cell) return html`<td class="none">–</td>`;
  const long = Math.round(cell.chance * WHOLE * 10) / 10;
  return html`<td class=${cell.chance >= 0.5 ? 'likely' : ''} title=${cell.words}>
    <svg viewBox="0 0 ${WHOLE} 5" preserveAspectRatio="none" aria-hidden="true">
      ${svg`<rect class="ground" y="2" width=${WHOLE} height="1" />
        <rect class="bar" width=${long} height="5" />`}
    </svg>
    <b>${ofHundred(cell.chance)}</b>
  </td>`;
}
