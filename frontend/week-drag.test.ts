import { describe, expect, it } from 'vitest';
import { block, shown, week } from './sample';
import { minuteAt, snapped, visitAt } from './week-drag';
import './week-sheet';
import type { WeekSheet } from './week-sheet';

const DAY = { from: 420, until: 1020 };

describe('a visit under the pointer', () => {
  it('is the one of the block that has the minute', () => {
    expect(visitAt(block(), 500)?.opening).toBe('PN2-01');
    expect(visitAt(block(), 570)?.opening).toBe('PN2-02');
  });

  it('is the nearer one where nobody works', () => {
    const gap = block();
    const [first, second] = gap.items;
    if (first && second) gap.items = [first, { ...second, start: 560 }];
    expect(visitAt(gap, 545)?.opening).toBe('PN2-01');
    expect(visitAt(gap, 555)?.opening).toBe('PN2-02');
  });
});

describe('a place to put a visit down', () => {
  it('is the minute that the pointer shows', () => {
    expect(minuteAt(150, { left: 100, width: 100 }, DAY)).toBe(720);
  });

  it('is a whole step of five minutes', () => {
    expect(snapped(722.4, DAY)).toBe(720);
    expect(snapped(722.6, DAY)).toBe(725);
  });

  it('lies within the hours shown', () => {
    expect(snapped(100, DAY)).toBe(420);
    expect(snapped(2000, DAY)).toBe(1015);
  });
});

describe('the keyboard', () => {
  async function entered(items: number): Promise<{ root: ShadowRoot; told: unknown[] }> {
    const one = week();
    const first = one.crews[0]?.days[0]?.blocks[0];
    if (first) first.items = first.items.slice(0, items);
    const { element, root } = await shown<WeekSheet>('week-sheet', { week: one });
    const told: unknown[] = [];
    element.addEventListener('visit-chosen', (event) => told.push((event as CustomEvent).detail));
    root.querySelector<HTMLElement>('.block')?.focus();
    await element.updateComplete;
    root.querySelector('table')?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter' }));
    return { root, told };
  }

  it('opens a visit that stands alone', async () => {
    expect((await entered(1)).told).toEqual([{ opening: 'PN2-01', task: 'install' }]);
  });

  it('leads into the slip where there are several', async () => {
    const { root, told } = await entered(2);
    expect(told).toEqual([]);
    const slip = root.querySelector('visit-slip')?.shadowRoot;
    expect(slip?.activeElement?.getAttribute('aria-label')).toBe('Move or pin: Install of PN2-01');
  });
});

describe('what is pinned or filtered out', () => {
  it('has a nail, and says so', async () => {
    const one = week();
    const day = one.crews[0]?.days[0];
    if (day) day.blocks = [block({ pinned: true }), block({ from: 660, until: 720 })];
    const { root } = await shown<WeekSheet>('week-sheet', { week: one });
    const blocks = [...root.querySelectorAll('.block')];
    expect(blocks.map((b) => b.querySelectorAll('.nail').length)).toEqual([1, 0, 0]);
    expect(blocks[0]?.querySelector('.unseen')?.textContent).toContain(', pinned');
    expect(blocks[1]?.querySelector('.unseen')?.textContent).not.toContain('pinned');
  });

  it('is counted, and never called free', async () => {
    const one = week();
    const day = one.crews[0]?.days[1];
    if (day) day.hidden = 3;
    const { root } = await shown<WeekSheet>('week-sheet', { week: one });
    const lane = root.querySelector('.lane[data-crew="W1"][data-date="2026-04-14"]');
    expect(lane?.textContent).toContain('3 more, filtered out');
    expect(lane?.textContent).not.toContain('free');
  });
});
