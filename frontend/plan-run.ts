import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { costCurve, curveStyles } from './cost-curve';
import { grouped, lasting } from './run-words';
import { shared } from './shared';
import { english, speechOf, type Say } from './speech';
import type { Run, RunPoint } from './view-records';

/** A planning run as it goes: time, moves, and the cost on its way down. */
@customElement('plan-run')
export class PlanRun extends LitElement {
  static override styles = [
    shared,
    curveStyles,
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
      @media (max-width: 480px) {
        dl {
          gap: 0.9rem;
        }
      }
    `,
  ];

  @property({ attribute: false }) run: Run | undefined;

  override render(): TemplateResult | typeof nothing {
    const run = this.run;
    if (!run) return nothing;
    const say = speechOf(this);
    const share = shareOf(run);
    const points = pointsOf(run);
    return html`<div class="run">
      <span class="words">${run.words}</span>
      <div class="bar">
        <div
          class="track"
          role="progressbar"
          aria-label=${say('Planning')}
          aria-valuemin="0"
          aria-valuemax="100"
          aria-valuenow=${Math.round(share * 100)}
        >
          <div class="done" style="width:${share * 100}%"></div>
        </div>
        <div class="time"><span>${lasting(run.seconds)}</span><span>${timeLeft(run, say)}</span></div>
      </div>
      <dl>
        ${figure(say('moves tried'), run.moves)} ${figure(say('cost'), run.cost)} ${figure(say('planned'), run.planned)}
        ${figure(say('not planned'), run.unplanned)}
      </dl>
      ${points.length > 1 ? costCurve(points, say) : nothing}
    </div>`;
  }
}

/** The kept points, and where the run stands now. */
export function pointsOf(run: Run): RunPoint[] {
  const last = run.points.at(-1);
  if (!last || run.seconds <= last.seconds) return run.points;
  return [...run.points, { seconds: run.seconds, cost: run.cost, unplanned: run.unplanned }];
}

/** A run without a limit of time says nothing of how far it is. */
function shareOf(run: Run): number {
  if (run.status === 'done') return 1;
  return run.ofSeconds > 0 ? Math.min(1, run.seconds / run.ofSeconds) : 0;
}

export function timeLeft(run: Run, say: Say = english): string {
  if (ended(run) || run.ofSeconds <= 0) return '';
  const left = lasting(Math.max(0, Math.ceil(run.ofSeconds - run.seconds)));
  return say('{0} left of {1}', left, lasting(run.ofSeconds));
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
