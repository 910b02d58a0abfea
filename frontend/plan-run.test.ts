import { describe, expect, it } from 'vitest';
import { inWords, steps } from './cost-curve';
import { PlanRun, pointsOf, timeLeft } from './plan-run';
import { shown } from './sample';
import type { Run } from './view-records';

function run(over: Partial<Run> = {}): Run {
  return {
    id: '1',
    status: 'running',
    words: 'Planning',
    seconds: 5,
    ofSeconds: 20,
    moves: 100,
    cost: 900,
    planned: 8,
    unplanned: 2,
    points: [],
    ...over,
  };
}

const FALLING = [
  { seconds: 0, cost: 1200, unplanned: 3 },
  { seconds: 4, cost: 1300, unplanned: 2 },
  { seconds: 8, cost: 900, unplanned: 2 },
];

describe('a planning run', () => {
  it('fills its bar by its own limit, whoever asked for it', async () => {
    const { root } = await shown<PlanRun>('plan-run', { run: run() });
    expect(root.querySelector('[role=progressbar]')?.getAttribute('aria-valuenow')).toBe('25');
    expect(root.querySelector('.time')?.textContent).toContain('15 s left of 20 s');
  });

  it('tells the time left in minutes, and none once it has ended or where there is no limit', () => {
    expect(timeLeft(run({ ofSeconds: 300, seconds: 10.5 }))).toBe('4 min 50 s left of 5 min 00 s');
    expect(timeLeft(run({ status: 'stopped' }))).toBe('');
    expect(timeLeft(run({ ofSeconds: 0 }))).toBe('');
  });

  it('draws the stored points, the present cost at their end, and tells them in words', async () => {
    const { root } = await shown<PlanRun>('plan-run', { run: run({ seconds: 10, points: FALLING }) });
    expect(root.querySelectorAll('path.curve')).toHaveLength(3);
    expect(root.querySelector('svg')?.getAttribute('aria-label')).toBe(
      'Cost of the best plan over time: 1\u2009200 with 3 not planned at 0 s, ' +
        '1\u2009300 with 2 not planned at 4 s, 900 with 2 not planned at 8 s, 900 with 2 not planned at 10 s',
    );
    expect(root.querySelector('figcaption')?.textContent).toContain('more tasks were left out');
  });

  it('draws nothing before there are two points', async () => {
    const { root } = await shown<PlanRun>('plan-run', { run: run() });
    expect(root.querySelector('svg')).toBeNull();
  });

  it('adds no point where the stored ones reach to its end', () => {
    expect(pointsOf(run({ seconds: 8, points: FALLING }))).toEqual(FALLING);
  });
});

describe('the cost curve', () => {
  it('stays level until a better plan is found, and dashes what leaves out more', () => {
    expect(steps(FALLING)).toEqual([
      { path: 'M52 24.5H172V8', short: true },
      { path: 'M172 8H292V74', short: false },
    ]);
  });

  it('tells a long run in a few moments, its last among them', () => {
    const many = Array.from({ length: 200 }, (_, i) => ({ seconds: i, cost: 1000 - i, unplanned: 0 }));
    expect(inWords(many).split(', ')).toHaveLength(6);
    expect(inWords(many)).toContain('801 at 3 min 19 s');
  });
});
