import { css, html, svg, type TemplateResult } from 'lit';
import { grouped, lasting } from './run-words';
import { english, type Say } from './speech';
import type { RunPoint } from './view-records';

const BOX = { width: 300, height: 96, left: 52, right: 8, top: 8, foot: 22 };

export const curveStyles = css`
  figure {
    flex: 0 1 22rem;
    min-width: 0;
    margin: 0;
  }
  svg {
    display: block;
    width: 100%;
    height: auto;
  }
  .curve {
    fill: none;
    stroke: var(--accent);
    stroke-width: 1.8;
  }
  .curve.short {
    stroke-dasharray: 3 3;
  }
  .axis {
    fill: none;
    stroke: var(--line-strong);
  }
  text {
    font: 400 11px var(--type-narrow);
    fill: var(--ink-soft);
  }
  circle {
    fill: var(--accent);
  }
  figcaption {
    font: 400 0.78rem/1.3 var(--type-narrow);
    color: var(--ink-soft);
  }
`;

interface Step {
  path: string;
  /** more tasks are left out here than in the last plan, so that this cost and the last do not compare */
  short: boolean;
}

/** The cost of a run's best plan over time: steps, since it stays until a better plan is found. */
export function costCurve(points: RunPoint[], say: Say): TemplateResult {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return html``;
  const scale = scaleOf(points);
  const some = points.some((point) => point.unplanned > last.unplanned);
  return html`<figure>
    <svg viewBox="0 0 ${BOX.width} ${BOX.height}" role="img" aria-label=${inWords(points, say)}>
      ${axes(scale, say)}
      ${steps(points).map((step) => svg`<path class="curve ${step.short ? 'short' : ''}" d=${step.path} />`)}
      <circle cx=${scale.x(last.seconds)} cy=${scale.y(last.cost)} r="3" />
    </svg>
    ${some ? html`<figcaption>${say('Dashed: more tasks were left out than are now.')}</figcaption>` : ''}
  </figure>`;
}

/** What the drawing shows, for those who hear the page: its ends, and a few moments between. */
export function inWords(points: RunPoint[], say: Say = english): string {
  const few = points.filter((_, i) => i % Math.ceil(points.length / 5) === 0 || i === points.length - 1);
  const told = few.map((p) => {
    return p.unplanned > 0
      ? say('{0} with {1} not planned at {2}', grouped(p.cost), p.unplanned, lasting(p.seconds))
      : say('{0} at {1}', grouped(p.cost), lasting(p.seconds));
  });
  return say('Cost of the best plan over time: {0}', told.join(', '));
}

/** A level line to the next point, then down; drawn in pieces, so that what does not compare can be told apart. */
export function steps(points: RunPoint[]): Step[] {
  const scale = scaleOf(points);
  const end = points.at(-1);
  return points.slice(0, -1).map((point, i) => {
    const next = points[i + 1] ?? point;
    const path = `M${scale.x(point.seconds)} ${scale.y(point.cost)}H${scale.x(next.seconds)}V${scale.y(next.cost)}`;
    return { path, short: point.unplanned > (end?.unplanned ?? 0) };
  });
}

interface Scale {
  x(seconds: number): number;
  y(cost: number): number;
  least: number;
  most: number;
  end: number;
}

function scaleOf(points: RunPoint[]): Scale {
  const costs = points.map((point) => point.cost);
  const [least, most] = [Math.min(...costs), Math.max(...costs)];
  const end = Math.max(points.at(-1)?.seconds ?? 0, 0.001);
  const [wide, high] = [BOX.width - BOX.left - BOX.right, BOX.height - BOX.top - BOX.foot];
  const round = (value: number) => Math.round(value * 10) / 10;
  return {
    x: (seconds) => round(BOX.left + (Math.min(seconds, end) / end) * wide),
    y: (cost) => round(BOX.top + (most === least ? 0.5 : (most - cost) / (most - least)) * high),
    least,
    most,
    end,
  };
}

function axes(scale: Scale, say: Say): TemplateResult {
  const floor = BOX.height - BOX.foot;
  const right = BOX.width - BOX.right;
  const ticks = scale.most === scale.least ? [scale.most] : [scale.most, scale.least];
  return svg`<path class="axis" d="M${BOX.left} ${BOX.top - 4}V${floor + 4}H${right}" />
    ${ticks.map(
      (cost) => svg`<text x=${BOX.left - 4} y=${scale.y(cost) + 4} text-anchor="end">${grouped(cost)}</text>`,
    )}
    <text x=${BOX.left} y=${BOX.height - 4}>0 s</text>
    <text x=${(BOX.left + right) / 2} y=${BOX.height - 4} text-anchor="middle">${say('cost over time')}</text>
    <text x=${right} y=${BOX.height - 4} text-anchor="end">${lasting(scale.end)}</text>` as TemplateResult;
}
