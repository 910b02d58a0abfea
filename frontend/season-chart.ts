import { LitElement, css, html, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { shared } from './shared';
import { english, speechOf, type Say } from './speech';
import type { Season, SeasonMonth } from './view-records';

const BOX = { width: 420, height: 212, left: 34, right: 6, top: 20, foot: 34 };
const FLOOR = BOX.height - BOX.foot;
const BAR = 0.52;
const LETTER = 4.6;

/** One facade's months: hours of use with their band between years, over the light that there is and against the work that is left. */
@customElement('season-chart')
export class SeasonChart extends LitElement {
  static override styles = [
    shared,
    css`
      svg {
        display: block;
        width: 100%;
        max-width: 46rem;
        height: auto;
      }
      .grid {
        stroke: var(--line);
      }
      .axis {
        fill: none;
        stroke: var(--line-strong);
      }
      text {
        font: 400 10px var(--type-narrow);
        fill: var(--ink-soft);
      }
      .light {
        fill: none;
        stroke: var(--line-strong);
        stroke-dasharray: 3 2;
      }
      .use {
        fill: var(--install-wash);
        stroke: var(--install);
        stroke-width: 1.2;
      }
      .band {
        fill: none;
        stroke: var(--ink);
        stroke-width: 1.4;
      }
      .work {
        fill: none;
        stroke: var(--clad);
        stroke-width: 2;
      }
      .head {
        fill: var(--sheet);
        stroke: var(--clad);
        stroke-width: 1.6;
      }
      .due {
        stroke: var(--alarm);
        stroke-width: 1.4;
        stroke-dasharray: 5 3;
      }
      .due-words {
        font-weight: 600;
        fill: var(--alarm);
      }
      ul {
        display: flex;
        flex-wrap: wrap;
        gap: 0.15rem 1.1rem;
        margin: 0.3rem 0 0;
        padding: 0;
        list-style: none;
        font: 400 0.82rem/1.4 var(--type-narrow);
        color: var(--ink-soft);
      }
      li {
        display: flex;
        gap: 0.4rem;
        align-items: center;
      }
      li svg {
        flex: none;
        width: 24px;
        height: 14px;
      }
      @media print {
        svg {
          print-color-adjust: exact;
        }
      }
    `,
  ];

  @property({ attribute: false }) season: Season | undefined;

  override render(): TemplateResult | typeof nothing {
    const season = this.season;
    if (!season || season.months.length === 0) return nothing;
    const say = speechOf(this);
    const scale = new Scale(season);
    return html`<svg viewBox="0 0 ${BOX.width} ${BOX.height}" role="img" aria-label=${seasonWords(season, say)}>
        ${scale.ticks().map(
          (hours) =>
            svg`<line class="grid" x1=${BOX.left} x2=${BOX.width - BOX.right} y1=${scale.y(hours)} y2=${scale.y(hours)} />
              <text x=${BOX.left - 4} y=${scale.y(hours) + 3.5} text-anchor="end">${hours}</text>`,
        )}
        <text x="2" y="10">${say('crew-hours')}</text>
        ${season.months.map((month, i) => column(month, i, scale))}
        <path class="axis" d="M${BOX.left} ${BOX.top}V${FLOOR}H${BOX.width - BOX.right}" />
        ${work(season, scale)} ${due(season, scale, say)}
      </svg>
      ${key(season, say)}`;
  }
}

/** From months and hours to the drawing. */
export class Scale {
  readonly step: number;
  private readonly top: number;
  private readonly wide: number;

  constructor(season: Season) {
    const most = Math.max(1, ...season.months.map((m) => Math.max(m.light, m.high, m.left)));
    this.step = stepOf(most);
    this.top = Math.ceil(most / this.step) * this.step;
    this.wide = (BOX.width - BOX.left - BOX.right) / season.months.length;
  }

  x(month: number): number {
    return round(BOX.left + month * this.wide);
  }

  y(hours: number): number {
    return round(FLOOR - (hours / this.top) * (FLOOR - BOX.top));
  }

  ticks(): number[] {
    return Array.from({ length: Math.round(this.top / this.step) + 1 }, (_, i) => i * this.step);
  }
}

/** A round step that gives no more than five lines. */
export function stepOf(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most / 5));
  const found = [1, 2, 5, 10].find((times) => times * power * 5 >= most);
  return Math.max(1, (found ?? 10) * power);
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

function column(month: SeasonMonth, i: number, scale: Scale): TemplateResult {
  const middle = scale.x(i + 0.5);
  const [from, until] = [scale.x(i + 0.5 - BAR / 2), scale.x(i + 0.5 + BAR / 2)];
  const box = (hours: number) => `M${from} ${FLOOR}V${scale.y(hours)}H${until}V${FLOOR}`;
  const [low, high] = [scale.y(month.low), scale.y(month.high)];
  return svg`<path class="light" d=${box(month.light)} />
    <path class="use" d=${box(month.usable)} />
    <path class="band" d="M${middle - 4} ${low}h8M${middle - 4} ${high}h8M${middle} ${low}V${high}" />
    <text x=${middle} y=${FLOOR + 13} text-anchor="middle">${month.label}</text>
    ${month.year ? svg`<text x=${middle} y=${FLOOR + 26} text-anchor="middle">${month.year}</text>` : nothing}` as TemplateResult;
}

/** What is left as each month begins, with a ring at its start; once nothing is left the line lies on the floor and ends. */
function work(season: Season, scale: Scale): TemplateResult {
  const last = season.months.findIndex((month) => month.left <= 0);
  const shown = last < 0 ? season.months : season.months.slice(0, last + 1);
  const path = shown.map((month, i) => `${i === 0 ? 'M' : 'L'}${scale.x(i)} ${scale.y(month.left)}`).join('');
  return svg`<path class="work" d=${path} />
    ${shown.map((month, i) => svg`<circle class="head" cx=${scale.x(i)} cy=${scale.y(month.left)} r="2.6" />`)}` as TemplateResult;
}

/** Its words begin beside the name of the axis where the line stands below that. */
function due(season: Season, scale: Scale, say: Say): TemplateResult | typeof nothing {
  if (season.due < 0) return nothing;
  const x = scale.x(season.due);
  const end = season.due > season.months.length / 2;
  const beside = Math.max(x + 3, say('crew-hours').length * LETTER + 8);
  return svg`<line class="due" x1=${x} x2=${x} y1=${BOX.top - 4} y2=${FLOOR} />
    <text class="due-words" x=${end ? x - 3 : beside} y=${BOX.top - 8} text-anchor=${end ? 'end' : 'start'}>${season.dueWords}</text>` as TemplateResult;
}

function key(season: Season, say: Say): TemplateResult {
  const sign = (drawing: TemplateResult) => html`<svg viewBox="0 0 24 14" aria-hidden="true">${drawing}</svg>`;
  return html`<ul>
    <li>${sign(svg`<path class="use" d="M5 14V3H19V14" />` as TemplateResult)} ${say('hours of use, on average')}</li>
    <li>
      ${sign(svg`<path class="band" d="M8 2h8M8 12h8M12 2V12" />` as TemplateResult)}
      ${say('8 of 10 years lie between')}
    </li>
    <li>${sign(svg`<path class="light" d="M5 14V3H19V14" />` as TemplateResult)} ${say('light within the shift')}</li>
    <li>
      ${sign(svg`<path class="work" d="M0 4L24 11" /><circle class="head" cx="12" cy="7.5" r="2.6" />` as TemplateResult)}
      ${say('install work left as the month begins')}
    </li>
    ${
      season.due < 0
        ? nothing
        : html`<li>
            ${sign(svg`<line class="due" x1="12" x2="12" y1="0" y2="14" />` as TemplateResult)} ${say('due date')}
          </li>`
    }
  </ul>`;
}

/** What the drawing shows, for those who hear the page; month by month it stands in the table. */
export function seasonWords(season: Season, say: Say = english): string {
  const use = season.months.map((month) => month.usable);
  const best = season.months[use.indexOf(Math.max(...use))];
  const worst = season.months[use.indexOf(Math.min(...use))];
  const [first] = season.months;
  const done = season.months.find((month) => month.left <= 0);
  const told = (month: SeasonMonth | undefined) =>
    say('{0}, {1} crew-hours', month?.name ?? '', Math.round(month?.usable ?? 0));
  const parts = [season.title, told(best), told(worst), Math.round(first?.left ?? 0)];
  const course = done
    ? say(
        '{0}: most hours of use in {1}; fewest in {2}; {3} crew-hours of install work at the start, none left as {4} begins',
        ...parts,
        done.name,
      )
    : say(
        '{0}: most hours of use in {1}; fewest in {2}; {3} crew-hours of install work at the start, some left in every month',
        ...parts,
      );
  return season.due < 0 ? course : `${course}; ${season.dueWords}`;
}
