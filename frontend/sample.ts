/* A small week and wall for the component tests: two crews, three days, rain on the second. */
import type { Block, Glyph, Strip, Wall, Week } from './view-records';

export function block(over: Partial<Block> = {}): Block {
  return {
    task: 'install',
    siteCode: 'PH',
    site: 'Pier Hall',
    facade: 'north',
    level: 2,
    from: 480,
    until: 600,
    fromText: '08:00',
    untilText: '10:00',
    beyond: false,
    pinned: false,
    ticks: [540],
    items: [
      { opening: 'PN2-01', from: '08:00', until: '09:00', start: 480, end: 540, words: 'method A', beyond: false },
      { opening: 'PN2-02', from: '09:00', until: '10:00', start: 540, end: 600, words: 'method A', beyond: false },
    ],
    ...over,
  };
}

export function week(days = 3): Week {
  const dates = Array.from({ length: days }, (_, i) => `2026-04-${13 + i}`);
  const shift = { from: 420, until: 960 };
  return {
    fromHour: 7,
    untilHour: 17,
    days: dates.map((date, i) => ({
      date,
      weekday: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'][i % 7] ?? '',
      label: `${13 + i} Apr`,
      sites: [{ code: 'PH', site: 'Pier Hall', sky: i === 1 ? [{ kind: 'rain', from: 540, until: 660 }] : [] }],
    })),
    crews: [
      {
        crew: 'W1',
        task: 'install',
        trade: 'window crew',
        days: dates.map((date, i) => ({
          date,
          shift,
          rest: null,
          sky: [],
          blocks: i === 0 ? [block(), block({ level: 3, from: 660, until: 720 })] : [],
          hidden: 0,
          idle: 'free',
        })),
      },
      {
        crew: 'C1',
        task: 'clad',
        trade: 'siding crew',
        days: dates.map((date, i) => ({
          date,
          shift: i === 2 ? null : shift,
          rest: null,
          sky: [],
          blocks: i === 1 ? [block({ task: 'clad', beyond: true })] : [],
          hidden: 0,
          idle: 'free',
        })),
      },
    ],
  };
}

export function glyph(over: Partial<Glyph> = {}): Glyph {
  return {
    opening: 'PN2-01',
    widthMm: 1200,
    heightMm: 1500,
    progress: 'not begun',
    words: 'not begun; open to rain',
    rating: 'R0',
    water: false,
    apron: 'later',
    pan: 'later',
    window: 'later',
    jambs: 'later',
    head: 'later',
    flap: 'none',
    wrap: 'later',
    second: 'none',
    clad: 'later',
    edgeHeld: false,
    hand: null,
    ...over,
  };
}

export function wall(): Wall {
  return {
    title: 'Pier Hall, north',
    heading: 'faces north, 0°',
    courses: [
      { level: 1, openings: [glyph({ opening: 'PN1-01' }), glyph({ opening: 'PN1-02' })] },
      { level: 2, openings: [glyph()] },
    ],
  };
}

export function strip(): Strip {
  return {
    title: 'Pier Hall, north',
    heading: 'faces north, 0°',
    length: 2880,
    days: [
      { from: 0, label: 'Mon 13 Apr' },
      { from: 1440, label: 'Tue 14 Apr' },
    ],
    sky: {
      from: 540,
      rain: [1.2, 0.1, ...Array<number>(13).fill(0)],
      chance: [60, 20, ...Array<number>(13).fill(5)],
      raining: [true, ...Array<boolean>(14).fill(false)],
      wall: [0.3, ...Array<number>(14).fill(0)],
      wetting: [true, ...Array<boolean>(14).fill(false)],
      gust: [12.4, ...Array<number>(14).fill(4)],
      temperature: [...Array<number>(14).fill(9), 2],
    },
    limits: { chance: 30, gust: 10, cold: 4 },
    dark: [{ from: 0, until: 400 }],
    forecastEnd: 1440,
    tasks: [
      { task: 'install', spans: [{ from: 420, until: 510 }], words: ['Mon 13 Apr 07:00 to 08:30'] },
      { task: 'clad', spans: [{ from: 420, until: 1140 }], words: [] },
    ],
  };
}

export async function shown<E extends HTMLElement & { updateComplete: Promise<boolean> }>(
  tag: string,
  values: Partial<E>,
): Promise<{ element: E; root: ShadowRoot }> {
  const element = Object.assign(document.createElement(tag), values) as unknown as E;
  document.body.replaceChildren(element);
  await element.updateComplete;
  return { element, root: element.shadowRoot as ShadowRoot };
}
