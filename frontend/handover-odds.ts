import { css, html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { oddsStyles, ofHundred } from './odds-shared';
import { shared } from './shared';
import { english, speechOf, type Say } from './speech';
import type { HandoverMark, HandoverOdds as Odds } from './view-records';

const BOX = { width: 340, height: 178, left: 50, right: 10, top: 22, foot: 24 };
const FLOOR = BOX.height - BOX.foot;
const LABEL_WIDTH = 46;
const HALF_LABEL = 20;

/** The chance that a facade is handed over by the end of each day, with its due day and the days of 5, 8 and 9 cases of ten. */
@customElement('handover-odds')
export class HandoverOdds extends LitElement {
  static override styles = [
    shared,
    oddsStyles,
    css`
      svg {
        display: block;
        width: 100%;
        max-width: 30rem;
        height: auto;
      }
      .grid {
        stroke: var(--line);
      }
      .axis {
        fill: none;
        stroke: var(--line-strong);
      }
      .area {
        fill: var(--install-wash);
      }
      .curve {
        fill: none;
        stroke: var(--install);
        stroke-width: 2;
      }
      .mark {
        fill: var(--sheet);
        stroke: var(--install);
        stroke-width: 1.8;
      }
      .due {
        stroke: var(--alarm);
        stroke-width: 1.6;
        stroke-dasharray: 5 3;
      }
      .due-words {
        font-weight: 600;
        fill: var(--alarm);
      }
      .dots {
        fill: var(--beyond);
      }
    `,
  ];

  @property({ attribute: false }) odds: Odds | undefined;

  override render(): TemplateResult | typeof nothing {
    const odds = this.odds;
    if (!odds || odds.days.length === 0) return nothing;
    const say = speechOf(this);
    const x = scale(odds);
    return html`<svg viewBox="0 0 ${BOX.width} ${BOX.height}" role="img" aria-label=${inWords(odds, say)}>
        ${climate(odds, x)} ${grid(say)}
        <path class="area" d="${curve(odds, x)}V${FLOOR}H${x(0)}Z" />
        <path class="curve" d=${curve(odds, x)} />
        <path class="axis" d="M${BOX.left} ${BOX.top}V${FLOOR}H${BOX.width - BOX.right}" />
        ${labels(odds, x)} ${due(odds, x)} ${odds.marks.map((mark) => sign(mark, x))}
      </svg>
      <ul class="key" aria-hidden="true">
        <li>${say('○ 5, □ 8, ◇ 9 cases of 10')}</li>
        ${odds.days.some((day) => day.sky !== 'forecast') ? html`<li><span class="climate"></span>${say('weather from the climate, not forecast')}</li>` : nothing}
      </ul>`;
  }
}

type X = (days: number) => number;

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

function y(chance: number): number {
  return round(FLOOR - chance * (FLOOR - BOX.top));
}

function scale(odds: Odds): X {
  const wide = BOX.width - BOX.left - BOX.right;
  return (days) => round(BOX.left + (Math.min(Math.max(days, 0), odds.days.length) / odds.days.length) * wide);
}

/** Straight from the end of one day to the end of the next: within a day nothing is told. */
export function curve(odds: Odds, x: X = scale(odds)): string {
  const ends = odds.days.map((day, i) => `L${x(i + 1)} ${y(day.chance)}`);
  return `M${x(0)} ${y(0)}${ends.join('')}`;
}

function grid(say: Say): TemplateResult[] {
  return [0.5, 0.8, 0.9, 1].map(
    (share) =>
      svg`<line class="grid" x1=${BOX.left} x2=${BOX.width - BOX.right} y1=${y(share)} y2=${y(share)} />
        <text x=${BOX.left - 5} y=${y(share) + (share === 0.9 ? 6 : 4)} text-anchor="end">${
          share === 1 ? say('all') : say('{0} of 10', share * 10)
        }</text>`,
  );
}

function climate(odds: Odds, x: X): TemplateResult[] {
  return odds.days.flatMap((day, i) => {
    if (day.sky === 'forecast') return [];
    const from = x(day.sky === 'partly' ? i + 0.5 : i);
    return [svg`<path class="dots" d=${dots(from, x(i + 1))} />`];
  });
}

/** The dotted ground of hours that are not told, as on the other sheets. */
function dots(from: number, until: number): string {
  const each: string[] = [];
  for (let left = Math.ceil(from / 5) * 5; left < until; left += 5)
    for (let top = BOX.top + 3; top < FLOOR; top += 5) each.push(`M${left} ${top}h1.2v1.2h-1.2Z`);
  return each.join('');
}

/** As many days as there is room for are named. */
function labels(odds: Odds, x: X): TemplateResult[] {
  const room = Math.max(1, Math.floor((BOX.width - BOX.left - BOX.right) / LABEL_WIDTH));
  const every = Math.ceil(odds.days.length / room);
  return odds.days.flatMap((day, i) =>
    i % every === 0
      ? [
          svg`<path class="axis" d="M${x(i)} ${FLOOR}v4" /><text x=${Math.min(
            BOX.width - HALF_LABEL,
            x(i + 0.5),
          )} y=${BOX.height - 6} text-anchor="middle">${day.label}</text>`,
        ]
      : [],
  );
}

function due(odds: Odds, x: X): TemplateResult | typeof nothing {
  if (odds.due < 0) return nothing;
  const at = x(odds.due);
  const right = at > BOX.width / 2;
  return svg`<line class="due" x1=${at} x2=${at} y1=${BOX.top - 8} y2=${FLOOR} />
    <text class="due-words" x=${at + (right ? -4 : 4)} y=${BOX.top - 9} text-anchor=${right ? 'end' : 'start'}>${
      odds.dueWords
    }</text>` as TemplateResult;
}

/** A shape for each, so that they are told apart without colour. */
function sign(mark: HandoverMark, x: X): TemplateResult {
  const [cx, cy] = [x(mark.at), y(mark.ofTen / 10)];
  const shape = { 5: 'circle', 8: 'square', 9: 'diamond' }[mark.ofTen] ?? 'circle';
  const path = {
    circle: `M${cx - 4.5} ${cy}a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0 -9 0Z`,
    square: `M${cx - 4} ${cy - 4}h8v8h-8Z`,
    diamond: `M${cx} ${cy - 5.5}L${cx + 5.5} ${cy}L${cx} ${cy + 5.5}L${cx - 5.5} ${cy}Z`,
  }[shape];
  return svg`<path class="mark ${shape}" d=${path}><title>${mark.words}</title></path>` as TemplateResult;
}

/** What the drawing shows, for those who hear the page. */
export function inWords(odds: Odds, say: Say = english): string {
  const days = odds.marks.map((mark) => mark.words).join('; ');
  const told = odds.days.map((day) => `${day.label} ${ofHundred(day.chance)}`).join(', ');
  const chances = say('Chance of 100 by the end of each day: {0}', told);
  return [`${odds.title}: ${days}`, odds.dueWords, chances].filter(Boolean).join('. ');
}
