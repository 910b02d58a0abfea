import { describe, expect, it } from 'vitest';
import './crew-day-odds';
import type { CrewDayOdds } from './crew-day-odds';
import './handover-odds';
import { curve, inWords, type HandoverOdds } from './handover-odds';
import { ofHundred } from './odds-shared';
import { shown } from './sample';
import type { HandoverOdds as Handover, WetOpening } from './view-records';
import './wet-odds';
import { top, type WetOdds } from './wet-odds';

function handover(over: Partial<Handover> = {}): Handover {
  return {
    title: 'Pier Hall, north',
    days: [
      { label: '15 Apr', chance: 0, sky: 'forecast' },
      { label: '16 Apr', chance: 0.5, sky: 'partly' },
      { label: '17 Apr', chance: 1, sky: 'climate' },
    ],
    marks: [
      { ofTen: 5, at: 2, words: 'in 5 of 10 cases by Thu 16 Apr' },
      { ofTen: 8, at: 2.6, words: 'in 8 of 10 cases by Fri 17 Apr' },
      { ofTen: 9, at: 2.8, words: 'in 9 of 10 cases by Fri 17 Apr' },
    ],
    due: 2,
    dueWords: 'due 16 Apr',
    ...over,
  };
}

describe('a chance in a figure', () => {
  it('is no certainty unless all trials say so', () => {
    expect([0, 0.004, 0.5, 0.714, 0.996, 1].map(ofHundred)).toEqual(['0', '<1', '50', '71', '>99', '100']);
  });
});

describe('the odds of a hand-over', () => {
  it('climb from the end of one day to the end of the next', () => {
    expect(curve(handover())).toBe('M50 154L143.3 154L236.7 88L330 22');
  });

  it('mark the days of 5, 8 and 9 cases with shapes of their own, at their height', async () => {
    const { root } = await shown<HandoverOdds>('handover-odds', { odds: handover() });
    expect(root.querySelector('.mark.circle')?.getAttribute('d')).toMatch(/^M232\.2 88a/);
    expect(root.querySelector('.mark.square')?.getAttribute('d')).toMatch(/^M288\.7 44\.4h8/);
    expect(root.querySelector('.mark.diamond title')?.textContent).toBe('in 9 of 10 cases by Fri 17 Apr');
  });

  it('mark the due day, and none where there is none', async () => {
    const due = await shown<HandoverOdds>('handover-odds', { odds: handover() });
    expect(due.root.querySelector('line.due')?.getAttribute('x1')).toBe('236.7');
    expect(due.root.querySelector('.due-words')?.textContent).toBe('due 16 Apr');
    const none = await shown<HandoverOdds>('handover-odds', { odds: handover({ due: -1, dueWords: '' }) });
    expect(none.root.querySelector('line.due')).toBeNull();
  });

  it('put a ground of dots and words under days that are not forecast', async () => {
    const { root } = await shown<HandoverOdds>('handover-odds', { odds: handover() });
    const grounds = [...root.querySelectorAll('.dots')].map((one) => one.getAttribute('d') ?? '');
    expect(grounds).toHaveLength(2);
    expect(grounds[0]).toMatch(/^M190 /);
    expect(root.querySelector('.key')?.textContent).toContain('weather from the climate, not forecast');
    const told = handover();
    told.days.forEach((day) => (day.sky = 'forecast'));
    const dry = await shown<HandoverOdds>('handover-odds', { odds: told });
    expect(dry.root.querySelector('.dots')).toBeNull();
    expect(dry.root.querySelector('.key')?.textContent).not.toContain('climate');
  });

  it('are said in words', () => {
    expect(inWords(handover())).toBe(
      'Pier Hall, north: in 5 of 10 cases by Thu 16 Apr; in 8 of 10 cases by Fri 17 Apr; in 9 of 10 cases by ' +
        'Fri 17 Apr. due 16 Apr. Chance of 100 by the end of each day: 15 Apr 0, 16 Apr 50, 17 Apr 100',
    );
  });
});

describe('the odds of crew-days', () => {
  const odds = {
    days: [
      { label: 'Mon 13', sky: 'forecast' as const },
      { label: 'Tue 14', sky: 'climate' as const },
    ],
    crews: [
      { crew: 'W1', cells: [{ chance: 0.2, error: 0.01, words: '20 ± 1 of 100' }, null] },
      { crew: 'C1', cells: [null, { chance: 0.75, error: 0.01, words: '75 ± 1 of 100' }] },
    ],
  };

  it('stand as figures over bars of their length, and a dash where a crew does not come', async () => {
    const { root } = await shown<CrewDayOdds>('crew-day-odds', { odds });
    const rows = [...root.querySelectorAll('tbody tr')].map((row) =>
      [...row.children].map((cell) => cell.textContent.trim()).join('|'),
    );
    expect(rows).toEqual(['W1|20|–', 'C1|–|75']);
    expect([...root.querySelectorAll('.bar')].map((bar) => bar.getAttribute('width'))).toEqual(['8', '30']);
  });

  it('tell likely ones and days of climate by more than a colour', async () => {
    const { root } = await shown<CrewDayOdds>('crew-day-odds', { odds });
    expect(root.querySelectorAll('td.likely')).toHaveLength(1);
    expect(root.querySelector('th.climate')?.textContent).toContain('weather from the climate');
    expect(root.querySelector('.key')?.textContent).toContain('underlined');
  });
});

describe('the odds of openings', () => {
  const opening = (over: Partial<WetOpening> = {}): WetOpening => ({
    opening: 'PN1-01',
    place: 'Pier Hall, north',
    wet: 0.1,
    error: 0.02,
    rainedOn: 0.3,
    words: '10 ± 2 of 100',
    ...over,
  });

  it('are bars to the next ten of the largest', async () => {
    expect(top([opening(), opening({ rainedOn: 0.31 })])).toBe(0.4);
    expect(top([opening({ wet: 0, error: 0, rainedOn: 0 })])).toBe(0.1);
    const { root } = await shown<WetOdds>('wet-odds', {
      odds: { openings: [opening({ rainedOn: 0.4 }), opening({ opening: 'PN1-02', wet: 0.2 })], more: 4 },
    });
    expect([...root.querySelectorAll('.wet')].map((bar) => bar.getAttribute('d'))).toEqual([
      'M0 5H25V15H0Z',
      'M0 5H50V15H0Z',
    ]);
    expect(root.querySelector('.error')?.getAttribute('d')).toBe('M20 10H30M20 6V14M30 6V14');
    expect(root.querySelector('.key')?.textContent).toContain('4 more in the table');
  });

  it('say which opening is chosen', async () => {
    const { element, root } = await shown<WetOdds>('wet-odds', { odds: { openings: [opening()], more: 0 } });
    const chosen: string[] = [];
    element.addEventListener('opening-chosen', (event) =>
      chosen.push((event as CustomEvent<{ opening: string }>).detail.opening),
    );
    root.querySelector('button')?.click();
    expect(chosen).toEqual(['PN1-01']);
  });
});
