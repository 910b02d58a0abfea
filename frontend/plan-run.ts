import { LitElement, css, html, nothing, svg, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { shared } from './shared';
import type { Run } from './view-records';

interface Mark {
  seconds: number;
  cost: number;
}

const CURVE = { width: 180, height: 34 };

/** A planning run as it goes: time, moves, and the cost on its way down. */
@customElement('plan-run')
export class PlanRun extends LitElement {
  static override styles = [
    shared,
    css`
      .run {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0.35rem 1.4rem;
        font-size: 0.9rem;
      }
      .words {
        font-weight: 600;
      }
      .bar {
        flex: 1 1 10rem;
        min-width: 8rem;
      }
      .track {
        position: relative;
        height: 8px;
        overflow: hidden;
        background: var(--dark-wash);
        border: 1px solid var(--line-strong);
        border-radius: 2px;
      }
      .done {
        position: absolute;
        inset-block: 0;
        left: 0;
        background: var(--accent);
        transition: width 0.4s linear;
      }
      .time {
        display: flex;
        justify-content: space-between;
        font: 400 0.78rem/1.3 var(--type-narrow);
        color: var(--ink-soft);
      }
      dl {
        display: flex;
        gap: 1.2rem;
        margin: 0;
      }
      dt {
        font: 400 0.76rem/1.2 var(--type-narrow);
        color: var(--ink-soft);
      }
      dd {
        margin: 0;
        font-weight: 600;
        line-height: 1.2;
      }
      svg {
        overflow: visible;
      }
      .curve {
        fill: none;
        stroke: var(--accent);
        stroke-width: 1.6;
      }
      .base {
        stroke: var(--line-strong);
      }
      circle {
        fill: var(--accent);
      }
      @media (max-width: 480px) {
        svg {
          display: none;
        }
        dl {
          gap: 0.9rem;
        }
      }
    `,
  ];

  @property({ attribute: false }) run: Run | undefined;
  @state() private marks: Mark[] = [];
  private runShown = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    const run = this.run;
    if (!changed.has('run') || !run) return;
    if (run.id !== this.runShown) this.marks = [];
    this.runShown = run.id;
    if (run.moves > 0) this.marks = [...this.marks, { seconds: run.seconds, cost: run.cost }];
  }

  override render(): TemplateResult | typeof nothing {
    const run = this.run;
    if (!run) return nothing;
    const share = run.status === 'done' ? 1 : Math.min(1, run.seconds / Math.max(1, run.ofSeconds));
    return html`<div class="run">
      <span class="words">${run.words}</span>
      <div class="bar">
        <div
          class="track"
          role="progressbar"
          aria-label="Planning"
          aria-valuemin="0"
          aria-valuemax="100"
          aria-valuenow=${Math.round(share * 100)}
        >
          <div class="done" style="width:${share * 100}%"></div>
        </div>
        <div class="time">
          <span>${seconds(run.seconds)}</span><span>${ended(run) ? '' : `of ${seconds(run.ofSeconds)}`}</span>
        </div>
      </div>
      <dl>
        ${figure('moves tried', run.moves)} ${figure('cost', run.cost)} ${figure('planned', run.planned)}
        ${figure('not planned', run.unplanned)}
      </dl>
      ${this.marks.length > 1 ? this.renderCurve() : nothing}
    </div>`;
  }

  private renderCurve(): TemplateResult {
    const points = curve(this.marks, CURVE.width, CURVE.height);
    const [first, last] = [this.marks[0]?.cost ?? 0, this.marks.at(-1)?.cost ?? 0];
    const [x, y] = (points.at(-1) ?? '0,0').split(',');
    return html`<svg
      width=${CURVE.width}
      height=${CURVE.height}
      role="img"
      aria-label="Cost from ${grouped(first)} to ${grouped(last)}"
    >
      ${svg`<path class="base" d="M0 ${CURVE.height}H${CURVE.width}"/><polyline class="curve" points=${points.join(' ')}/>
        <circle cx=${x} cy=${y} r="3"/>`}
    </svg>`;
  }
}

/** The cost over time, scaled into a box; the least cost lies on its floor. */
export function curve(marks: Mark[], width: number, height: number): string[] {
  const costs = marks.map((m) => m.cost);
  const [least, most] = [Math.min(...costs), Math.max(...costs)];
  const end = Math.max(...marks.map((m) => m.seconds), 0.001);
  return marks.map((m) => {
    const up = most === least ? 0 : (m.cost - least) / (most - least);
    return `${((m.seconds / end) * width).toFixed(1)},${(height - 3 - up * (height - 6)).toFixed(1)}`;
  });
}

function ended(run: Run): boolean {
  return run.status !== 'running' && run.status !== 'waiting';
}

function figure(name: string, value: number): TemplateResult {
  return html`<div>
    <dt>${name}</dt>
    <dd>${grouped(value)}</dd>
  </div>`;
}

function grouped(value: number): string {
  return value.toLocaleString('en-US').replaceAll(',', '\u2009');
}

function seconds(value: number): string {
  return `${Math.floor(value)} s`;
}
