import { afterEach, describe, expect, it } from 'vitest';
import './season-chart';
import { Scale, seasonWords, stepOf, type SeasonChart } from './season-chart';
import type { Season } from './view-records';

const month = (name: string, usable: number, left: number) => ({
  label: name.slice(0, 3),
  year: '',
  name,
  light: 150,
  usable,
  low: usable - 20,
  high: usable + 15,
  left,
});

const season: Season = {
  title: 'Pier Hall, north',
  months: [month('May 2026', 80, 120), month('June 2026', 110, 40), month('July 2026', 130, 0)],
  due: 1.5,
  dueWords: 'due 15 June 2026',
};

async function shown(of: Season): Promise<ShadowRoot> {
  const chart = document.createElement('season-chart') as SeasonChart;
  chart.season = of;
  document.body.append(chart);
  await chart.updateComplete;
  return chart.shadowRoot as ShadowRoot;
}

afterEach(() => document.body.replaceChildren());

describe('season chart', () => {
  it('draws a bar, a band and the light for each month', async () => {
    const root = await shown(season);
    expect(root.querySelectorAll('svg[role] .use')).toHaveLength(3);
    expect(root.querySelectorAll('svg[role] .band')).toHaveLength(3);
    expect(root.querySelectorAll('svg[role] .light')).toHaveLength(3);
  });

  it('draws the band from the low year up to the high one, on the scale of the bars', async () => {
    const root = await shown(season);
    const scale = new Scale(season);
    const band = root.querySelector('svg[role] .band')?.getAttribute('d') ?? '';
    expect(band).toContain(` ${scale.y(60)}h8`);
    expect(band).toContain(` ${scale.y(95)}h8`);
    expect(scale.y(95)).toBeLessThan(scale.y(60));
    expect(root.querySelector('svg[role] .use')?.getAttribute('d')).toContain(`V${scale.y(80)}H`);
  });

  it('follows the work that is left until none is', async () => {
    const root = await shown(season);
    const scale = new Scale(season);
    expect(root.querySelector('svg[role] .work')?.getAttribute('d')).toBe(
      `M${scale.x(0)} ${scale.y(120)}L${scale.x(1)} ${scale.y(40)}L${scale.x(2)} ${scale.y(0)}`,
    );
  });

  it('marks the due date in words, and says nothing of one that is not there', async () => {
    expect((await shown(season)).querySelector('.due-words')?.textContent).toBe('due 15 June 2026');
    expect((await shown({ ...season, due: -1 })).querySelector('.due')).toBeNull();
  });

  it('tells in words what it draws', () => {
    expect(seasonWords(season)).toBe(
      'Pier Hall, north: most hours of use in July 2026, 130 crew-hours; fewest in May 2026, 80 crew-hours; ' +
        '120 crew-hours of install work at the start, none left as July 2026 begins; due 15 June 2026',
    );
  });

  it('has round lines, and no more than five steps of them', () => {
    for (const [most, step] of [
      [150, 50],
      [9, 2],
      [1000, 200],
      [3, 1],
      [26, 10],
    ] as const)
      expect(stepOf(most)).toBe(step);
  });

  it('draws nothing without months', async () => {
    expect((await shown({ ...season, months: [] })).querySelector('svg')).toBeNull();
  });
});
