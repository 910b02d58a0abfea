import { describe, expect, it } from 'vitest';
import { curve, PlanRun } from './plan-run';
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
    ...over,
  };
}

describe('a planning run', () => {
  it('fills its bar by the time that has passed', async () => {
    const { root } = await shown<PlanRun>('plan-run', { run: run() });
    expect(root.querySelector('[role=progressbar]')?.getAttribute('aria-valuenow')).toBe('25');
  });

  it('draws the cost as it falls, and begins afresh with the next run', async () => {
    const { element, root } = await shown<PlanRun>('plan-run', { run: run() });
    element.run = run({ seconds: 6, cost: 700 });
    await element.updateComplete;
    expect(root.querySelector('svg')?.getAttribute('aria-label')).toBe('Cost from 900 to 700');
    element.run = run({ id: '2', cost: 800 });
    await element.updateComplete;
    expect(root.querySelector('svg')).toBeNull();
  });
});

describe('the cost curve', () => {
  it('falls from the ceiling to the floor of its box', () => {
    const points = curve(
      [
        { seconds: 0, cost: 30 },
        { seconds: 10, cost: 10 },
      ],
      100,
      40,
    );
    expect(points).toEqual(['0.0,3.0', '100.0,37.0']);
  });
});
