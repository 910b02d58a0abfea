import { css, html, svg, type TemplateResult } from 'lit';
import { words } from './speech';
import type { SkySpan, Span, TaskCode } from './view-records';

export const TASKS: Record<TaskCode, { letter: string; name: string }> = {
  install: { letter: 'I', name: words('Install') },
  test: { letter: 'T', name: words('Water test') },
  wrap: { letter: 'W', name: words('Wrap') },
  clad: { letter: 'C', name: words('Clad') },
};

export const TASK_CODES = Object.keys(TASKS) as TaskCode[];

export const SKY_WORDS: Record<SkySpan['kind'], string> = {
  rain: words('rain forecast'),
  dark: words('dark'),
  beyond: words('beyond the forecast: climate only'),
};

/** The square that stands for a task: its letter on its colour, under its own pattern. */
export function taskMark(task: TaskCode): TemplateResult {
  return html`<span class="mark ${task}" aria-hidden="true">${TASKS[task].letter}</span>`;
}

/** Left edge and width of a stretch, in percent of what is shown of it; nothing where it lies outside. */
export function place(span: Span, shown: Span): string | undefined {
  const from = Math.max(span.from, shown.from);
  const until = Math.min(span.until, shown.until);
  if (until <= from) return undefined;
  const length = shown.until - shown.from;
  return `left:${round(((from - shown.from) / length) * 100)}%;width:${round(((until - from) / length) * 100)}%`;
}

function round(percent: number): number {
  return Math.round(percent * 1000) / 1000;
}

/** A nail with its head: what is pinned stays where it is. */
export const nail = svg`<path d="M4 2h8v2.2l-2 1v3.6l2.4 2.2H3.6L6 8.8V5.2l-2-1Z"/><path d="M8 11v4.2"/>`;

export const drop = svg`<path d="M8 1.5C10.6 5 12.6 7.6 12.6 10.1a4.6 4.6 0 0 1-9.2 0C3.4 7.6 5.4 5 8 1.5Z"/>`;

export const shared = css`
  :host {
    display: block;
    font-family: var(--type);
    font-variant-numeric: tabular-nums;
    color: var(--ink);
  }
  *,
  *::before {
    box-sizing: border-box;
  }
  button {
    font: inherit;
    color: inherit;
    cursor: pointer;
  }
  :focus-visible {
    outline: 2px solid var(--focus);
    outline-offset: 1px;
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  .install {
    --task: var(--install);
    --wash: var(--install-wash);
    --pattern: linear-gradient(var(--install), var(--install));
  }
  .test {
    --task: var(--test);
    --wash: var(--test-wash);
    --pattern: radial-gradient(circle at 2.5px 2.5px, var(--test) 1.7px, transparent 2px) 0 0 / 5px 5px;
  }
  .wrap {
    --task: var(--wrap);
    --wash: var(--wrap-wash);
    --pattern: repeating-linear-gradient(135deg, var(--wrap) 0 2px, transparent 2px 5px);
  }
  .clad {
    --task: var(--clad);
    --wash: var(--clad-wash);
    --pattern: repeating-linear-gradient(0deg, var(--clad) 0 1.5px, transparent 1.5px 3px);
  }
  .mark {
    display: inline-grid;
    place-items: center;
    position: relative;
    overflow: hidden;
    width: 1.35em;
    height: 1.5em;
    padding-top: 4px;
    font: 600 0.8em/1 var(--type);
    color: var(--ink);
    background: var(--wash);
    border: 1px solid var(--task);
    border-radius: 2px;
  }
  .mark::before {
    content: '';
    position: absolute;
    inset: 0 0 auto;
    height: 5px;
    background: var(--pattern);
  }
  .sky {
    position: absolute;
    inset-block: 0;
  }
  .sky.rain {
    background: repeating-linear-gradient(108deg, var(--rain) 0 1px, transparent 1px 6px), var(--rain-wash);
  }
  .sky.dark {
    background: var(--dark-wash);
  }
  .sky.beyond {
    background: radial-gradient(circle at 3px 3px, var(--beyond) 0.8px, transparent 1.2px) 0 0 / 7px 7px;
  }
`;
