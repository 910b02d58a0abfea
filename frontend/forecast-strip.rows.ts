import { html, nothing, svg, type TemplateResult } from 'lit';
import { clockAt, darkAt, hourAt, names, openAt, untold } from './forecast-strip.words';
import type { Say } from './speech';
import type { Strip } from './view-records';

const HOUR = 60;
/** A row is full at this much; more is no taller, the reading says how much. */
export const TALLEST = { rain: 4, wall: 1, gust: 25 };
const COLDEST = -10;
const WARMEST = 35;

/** Little is seen as well as much. */
const root = (value: number, tallest: number) => Math.sqrt(Math.min(1, value / tallest));

/** One path for all bars of a kind: a page may hold many strips. */
function bars(strip: Strip, height: (i: number) => number, which: (i: number) => boolean): string {
  const { sky } = strip;
  return sky.rain
    .map((_, i) => {
      const high = height(i) * 100;
      if (high <= 0 || !which(i)) return '';
      return `M${sky.from + i * HOUR} 100v${-high.toFixed(1)}h${HOUR}V100Z`;
    })
    .join('');
}

function drawn(strip: Strip, content: TemplateResult | TemplateResult[]): TemplateResult {
  return html`<svg viewBox="0 0 ${strip.length} 100" preserveAspectRatio="none" aria-hidden="true">${content}</svg>`;
}

function columns(strip: Strip, height: (i: number) => number, full: (i: number) => boolean): TemplateResult[] {
  return [
    svg`<path class="pale" d=${bars(strip, height, (i) => !full(i))}></path>`,
    svg`<path class="full" d=${bars(strip, height, full)}></path>`,
  ];
}

function limit(strip: Strip, share: number): TemplateResult {
  const y = 100 - Math.min(1, Math.max(0, share)) * 100;
  return svg`<line class="limit" x1="0" x2=${strip.length} y1=${y} y2=${y}></line>`;
}

const warmth = (celsius: number) => Math.min(1, Math.max(0, (celsius - COLDEST) / (WARMEST - COLDEST)));

/** The rows of the sky over the tasks: their name, their scale, and their bars. */
export function skyRows(strip: Strip, say: Say): { kind: string; name: string; scale: string; bars: TemplateResult }[] {
  const { sky, limits } = strip;
  const told = (values: number[], i: number) => values[i] ?? 0;
  const line = sky.temperature
    .map((c, i) => `${i === 0 ? 'M' : 'L'}${sky.from + i * HOUR} ${(100 - warmth(c) * 100).toFixed(1)}h${HOUR}`)
    .join('');
  return [
    {
      kind: 'rain',
      name: say('Rain'),
      scale: say('mm, to {0}', TALLEST.rain),
      bars: drawn(
        strip,
        columns(
          strip,
          (i) => root(told(sky.rain, i), TALLEST.rain),
          (i) => sky.raining[i] ?? false,
        ),
      ),
    },
    {
      kind: 'chance',
      name: say('Chance'),
      scale: say('counts from {0} %', limits.chance),
      bars: drawn(strip, [
        ...columns(
          strip,
          (i) => told(sky.chance, i) / 100,
          (i) => told(sky.chance, i) >= limits.chance,
        ),
        limit(strip, limits.chance / 100),
      ]),
    },
    {
      kind: 'wall',
      name: say('On the wall'),
      scale: say('l/m², to {0}', TALLEST.wall),
      bars: drawn(
        strip,
        columns(
          strip,
          (i) => root(told(sky.wall, i), TALLEST.wall),
          (i) => sky.wetting[i] ?? false,
        ),
      ),
    },
    {
      kind: 'gust',
      name: say('Gust'),
      scale: say('stops over {0} m/s', limits.gust),
      bars: drawn(strip, [
        ...columns(
          strip,
          (i) => Math.min(1, told(sky.gust, i) / TALLEST.gust),
          (i) => told(sky.gust, i) > limits.gust,
        ),
        limit(strip, limits.gust / TALLEST.gust),
      ]),
    },
    {
      kind: 'cold',
      name: say('Temperature'),
      scale: say('stops under {0} °C', limits.cold),
      bars: drawn(strip, [
        svg`<path class="full" d=${bars(
          strip,
          () => warmth(limits.cold),
          (i) => told(sky.temperature, i) < limits.cold,
        )}></path>`,
        svg`<path class="line" d=${line}></path>`,
        limit(strip, warmth(limits.cold)),
      ]),
    },
  ];
}

/** Hour by hour, for reading. */
export function hoursTable(strip: Strip, say: Say): TemplateResult {
  const starts = Array.from({ length: Math.floor(strip.length / HOUR) }, (_, i) => i * HOUR);
  return html`<table>
    <thead>
      <tr>
        ${[
          say('Hour'),
          say('Rain, mm'),
          say('Chance, %'),
          say('On the wall, l/m²'),
          say('Gust, m/s'),
          '°C',
          say('Light'),
          say('Open at its start for'),
        ].map((head) => html`<th scope="col">${head}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${starts.map((at) => hourRow(strip, at, say))}
    </tbody>
  </table>`;
}

function hourRow(strip: Strip, at: number, say: Say): TemplateResult {
  const told = hourAt(strip, at);
  const open = openAt(strip, at);
  const cells = told
    ? [
        told.raining ? say('{0} counts', told.rain.toFixed(1)) : told.rain.toFixed(1),
        told.chance.toFixed(0),
        told.wetting ? say('{0} wets it', told.wall.toFixed(2)) : told.wall.toFixed(2),
        told.gust.toFixed(1),
        told.temperature.toFixed(1),
      ]
    : [untold(strip, at, say), '', '', '', ''];
  return html`<tr>
    <th scope="row">${clockAt(strip, at)}</th>
    ${cells.map((cell) => html`<td>${cell || nothing}</td>`)}
    <td>${darkAt(strip, at) ? say('dark') : say('light')}</td>
    <td>${open.length ? names(open, say) : say('nothing')}</td>
  </tr>`;
}
