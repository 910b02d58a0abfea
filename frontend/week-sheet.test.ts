import { afterEach, describe, expect, it, vi } from 'vitest';
import { place } from './shared';
import { shown, week } from './sample';
import { neighbour, rowsOf } from './week-walk';
import './week-sheet';
import type { WeekSheet } from './week-sheet';

const sheet = (days = 3) => shown<WeekSheet>('week-sheet', { week: week(days) });

afterEach(() => vi.useRealTimers());

describe('a week sheet', () => {
  it('places a block by its minutes of the hours shown', async () => {
    const { root } = await sheet();
    // 08:00 to 10:00 of 07:00 to 17:00
    expect(root.querySelector('.block')?.getAttribute('style')).toBe('left:10%;width:20%');
  });

  it('tells a task by its letter as well as by its colour', async () => {
    const { root } = await sheet();
    const texts = [...root.querySelectorAll('.block')].map((b) => b.querySelector('b')?.textContent);
    expect(texts).toEqual(['I', 'I', 'C']);
  });

  it('draws the rows of many crews one screenful after the other, all in the end', async () => {
    const [crew] = week(3).crews;
    const crews = Array.from({ length: 60 }, (_, i) => ({ ...crew!, crew: `W${i}` }));
    const { root } = await shown<WeekSheet>('week-sheet', { week: { ...week(3), crews } });
    const rows = () => root.querySelectorAll('tbody tr').length;
    expect(rows()).toBeLessThan(crews.length);
    await vi.waitFor(() => expect(rows()).toBe(crews.length));
  });

  it('says in words what a block is', async () => {
    const { root } = await sheet();
    expect(root.querySelector('.block .unseen')?.textContent).toBe(
      'Install, Pier Hall, north, level 2, 2 openings, crew W1, Mon 13 Apr, 08:00 to 10:00',
    );
    expect(root.querySelector('.block.clad .unseen')?.textContent).toContain('beyond the forecast');
  });

  it('draws rain over the day of its site and says its hours', async () => {
    const { root } = await sheet();
    const heads = [...root.querySelectorAll('thead th')];
    expect(heads[2]?.querySelectorAll('.sky.rain')).toHaveLength(1);
    expect(heads[2]?.textContent).toContain('Pier Hall: rain 09:00 to 11:00');
    expect(heads[1]?.textContent).toContain('no rain forecast');
  });

  it('opens the visit on focus, opening by opening', async () => {
    const { element, root } = await sheet();
    root.querySelector<HTMLElement>('.block')?.focus();
    await element.updateComplete;
    const slip = root.querySelector('visit-slip') as HTMLElement & { updateComplete: Promise<boolean> };
    await slip.updateComplete;
    expect([...(slip.shadowRoot?.querySelectorAll('li .wall') ?? [])].map((b) => b.textContent?.trim())).toEqual([
      'PN2-01',
      'PN2-02',
    ]);
  });

  it('reaches every block by arrow keys from one stop of the tab key', async () => {
    const { element, root } = await sheet();
    expect(root.querySelectorAll('.block[tabindex="0"]')).toHaveLength(1);
    root.querySelector<HTMLElement>('.block')?.focus();
    await element.updateComplete;
    root.querySelector('table')?.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowDown' }));
    await element.updateComplete;
    expect(root.querySelector('.block[aria-pressed="true"]')?.className).toContain('clad');
  });

  it('turns to the next week when there are more than seven days', async () => {
    const { element, root } = await sheet(9);
    expect(root.querySelectorAll('thead th')).toHaveLength(8);
    root.querySelector<HTMLElement>('[aria-label="Later days"]')?.click();
    await element.updateComplete;
    expect(root.querySelectorAll('thead th')).toHaveLength(3);
  });

  it('opens on the day that it is', async () => {
    vi.useFakeTimers({ now: new Date(2026, 3, 21, 9), toFake: ['Date'] });
    const { root } = await sheet(9);
    expect(root.querySelector('th.today')?.textContent).toContain('21 Apr');
  });

  it('marks one day as the day of a narrow sheet', async () => {
    const { element, root } = await sheet();
    root.querySelectorAll<HTMLElement>('.days button')[1]?.click();
    await element.updateComplete;
    expect(root.querySelectorAll('td.today')).toHaveLength(2);
    expect(root.querySelector('th.today')?.textContent).toContain('Tue');
  });
});

describe('the walk over the blocks', () => {
  const rows = rowsOf(week(), week().days);
  const [first, second] = rows[0] ?? [];

  it('ends at the last block of a crew', () => {
    expect(neighbour(rows, first, 'ArrowRight')).toEqual(second);
    expect(neighbour(rows, second, 'ArrowRight')).toBeUndefined();
  });
});

describe('a stretch', () => {
  it('is cut at the ends of what is shown', () => {
    expect(place({ from: 0, until: 60 }, { from: 30, until: 90 })).toBe('left:0%;width:50%');
  });

  it('is nothing where it only touches', () => {
    expect(place({ from: 0, until: 30 }, { from: 30, until: 90 })).toBeUndefined();
  });
});
