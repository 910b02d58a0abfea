import { css, html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { oddsStyles, ofHundred } from './odds-shared';
import { shared } from './shared';
import { speechOf } from './speech';
import type { WetOdds as Odds, WetOpening } from './view-records';

/** Openings by their chance to get wet while they stand open, the likeliest first. */
@customElement('wet-odds')
export class WetOdds extends LitElement {
  static override styles = [
    shared,
    oddsStyles,
    css`
      ol {
        display: grid;
        gap: 0.3rem 0.8rem;
        margin: 0.3rem 0;
        padding: 0;
        list-style: none;
        font-size: 0.88rem;
      }
      li.opening {
        display: grid;
        grid-template-columns: 16rem minmax(6rem, 1fr) 7.5rem;
        gap: 0 0.8rem;
        align-items: center;
      }
      button {
        padding: 0.15rem 0;
        text-align: start;
        color: var(--accent);
        text-decoration: underline;
        text-underline-offset: 2px;
        background: none;
        border: 0;
      }
      .place {
        margin-inline-start: 0.4rem;
        color: var(--ink-soft);
      }
      svg {
        width: 100%;
        height: 1.1rem;
        overflow: visible;
      }
      .ground {
        fill: none;
        stroke: var(--line-strong);
        vector-effect: non-scaling-stroke;
      }
      .rained {
        fill: none;
        stroke: var(--rain);
        stroke-dasharray: 3 2;
        vector-effect: non-scaling-stroke;
      }
      .wet {
        fill: var(--rain);
      }
      .error {
        fill: none;
        stroke: var(--ink);
        stroke-width: 1.5;
        vector-effect: non-scaling-stroke;
      }
      @container (max-width: 40rem) {
        li.opening {
          grid-template-columns: minmax(0, 1fr) auto;
        }
        .name {
          grid-column: 1 / -1;
        }
      }
    `,
  ];

  @property({ attribute: false }) odds: Odds | undefined;

  override render(): TemplateResult | typeof nothing {
    const odds = this.odds;
    if (!odds || odds.openings.length === 0) return nothing;
    const say = speechOf(this);
    const most = top(odds.openings);
    return html`<ol aria-label=${say('Openings by their chance to get wet while open')}>
        ${odds.openings.map((one) => this.renderOpening(one, most))}
      </ol>
      <ul class="key" aria-hidden="true">
        <li>${say('Full bar: gets wet while open, with its standard error')}</li>
        <li>${say('dashed frame: is rained on')}</li>
        <li>${say('the bars end at {0} of 100', ofHundred(most))}</li>
        ${odds.more > 0 ? html`<li>${say('{0} more in the table', odds.more)}</li>` : nothing}
      </ul>`;
  }

  private renderOpening(one: WetOpening, most: number): TemplateResult {
    const x = (chance: number) => Math.round((Math.min(chance, most) / most) * 1000) / 10;
    const [low, high] = [x(Math.max(0, one.wet - one.error)), x(one.wet + one.error)];
    return html`<li class="opening">
      <span class="name">
        <button @click=${() => this.choose(one.opening)}>${one.opening}</button><span class="place">${one.place}</span>
      </span>
      <svg viewBox="0 0 100 20" preserveAspectRatio="none" aria-hidden="true">
        ${svg`<path class="ground" d="M0 0V20" />
          <path class="rained" d="M0 2H${x(one.rainedOn)}V18H0Z" />
          <path class="wet" d="M0 5H${x(one.wet)}V15H0Z" />
          <path class="error" d="M${low} 10H${high}M${low} 6V14M${high} 6V14" />`}
      </svg>
      <span>${one.words}</span>
    </li>`;
  }

  private choose(opening: string): void {
    this.dispatchEvent(new CustomEvent('opening-chosen', { detail: { opening }, bubbles: true, composed: true }));
  }
}

/** Bars are drawn to the next ten of the largest chance, so that small ones can be told apart. */
export function top(openings: WetOpening[]): number {
  const most = Math.max(...openings.map((one) => Math.max(one.rainedOn, one.wet + one.error)));
  return Math.min(1, Math.max(0.1, Math.ceil(most * 10) / 10));
}
