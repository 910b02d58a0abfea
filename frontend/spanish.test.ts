import { render } from 'lit';
import { afterEach, beforeEach, expect, it } from 'vitest';
import spanish from '../src/main/resources/speech/page.es.json';
import './crew-day-odds';
import './facade-drawing';
import './forecast-strip';
import './handover-odds';
import './lap-section';
import './opening-key';
import './plan-run';
import './release-offer';
import { roughLine } from './rough-line';
import { block, shown, strip, wall, week } from './sample';
import './season-chart';
import { sayIn, words } from './speech';
import './step-marker';
import { markAt, opening, photoAt } from './step-sample';
import { StepsPage } from './steps-page';
import './theme-switch';
import './visit-slip';
import './week-sheet';
import './wet-odds';

/* Whatever these screens say in Spanish is to be Spanish of ours or data, so that text which never came to the catalogue shows. */

const inWords = (text: string): string[] => text.toLowerCase().match(/\p{L}{2,}/gu) ?? [];
const SENTENCES: Record<string, string> = spanish;
const DATA = ['Ada', 'Do RO APR JF BAR REL', 'west', 'bent', 'Pier Hall north', 'north 38°', 'SERVIDOR'];

function known(data: string[]): Set<string> {
  return new Set([...Object.values(SENTENCES), ...DATA, ...data].flatMap(inWords));
}

/** Texts and what is heard in their place, of everything within. */
function texts(root: ParentNode): string[] {
  const all: string[] = [];
  for (const node of root.querySelectorAll('*')) {
    if (node.tagName === 'STYLE') continue;
    for (const name of ['aria-label', 'title', 'placeholder', 'alt']) all.push(node.getAttribute(name) ?? '');
    for (const child of node.childNodes) if (child.nodeType === Node.TEXT_NODE) all.push(child.textContent ?? '');
    if (node.shadowRoot) all.push(...texts(node.shadowRoot));
  }
  return all.map((text) => text.trim().replace(/\s+/g, ' ')).filter(Boolean);
}

function strange(root: ParentNode, data: string[] = []): string[] {
  const right = known(data);
  return texts(root).filter((text) => text in SENTENCES || inWords(text).some((word) => !right.has(word)));
}

const SERVER = { rating: { code: 'R0', words: 'servidor', mayBeLeft: false }, apron: 'servidor', drainsTo: 'servidor' };
const here = (over: object = {}) => opening({ ...SERVER, missingLaps: ['servidor'], sun: [], ...over });

beforeEach(() => document.documentElement.setAttribute('lang', 'es'));
afterEach(() => document.documentElement.setAttribute('lang', 'en'));

type Drawn = HTMLElement & { updateComplete: Promise<boolean> };
const drawnWith = (name: string, over: object) => shown<Drawn>(name, over as Partial<Drawn>);

it('finds English where it is', () => {
  const root = document.createElement('div');
  root.innerHTML = '<p>Steps</p><p>Brand new text</p><p>Pasos</p><button aria-label="Undo"></button>';
  expect(strange(root)).toEqual(['Steps', 'Brand new text', 'Undo']);
});

it('says the steps of an opening', async () => {
  for (const over of [
    {},
    { entries: [markAt('A', 'RO'), photoAt('A', 'k')] },
    { entries: [markAt('A', 'RO', { kind: 'undone', reason: 'bent' })] },
    { entries: [markAt('A', 'JF', { seq: 1, refusal: { words: 'servidor' } })] },
    { sections: { RO: '<svg></svg>' }, opening: here({ released: true }) },
    { opening: here({ lines: here().lines.map((line) => ({ ...line, trade: 'tester', yours: false, next: true })) }) },
    { opening: here({ lines: here().lines.map((line) => ({ ...line, done: true, at: '2026-04-13T19:00:00Z' })) }) },
  ]) {
    const { element, root } = await drawnWith('step-marker', { opening: here(), ...over });
    expect(strange(root, ['lun abr'])).toEqual([]);
    element.remove();
  }
});

it('says why a step may not be taken back, and asks for the reason where it may', async () => {
  for (const entries of [[markAt('A', 'RO')], [markAt('A', 'RO'), markAt('A', 'APR')]]) {
    const { element, root } = await shown<import('./step-marker').StepMarker>('step-marker', {
      opening: here(),
      entries,
    });
    root.querySelector<HTMLButtonElement>('button[aria-label="Corregir: Do RO"]')?.click();
    await element.updateComplete;
    expect(root.querySelector('dialog h2')?.textContent).toContain('Corregir');
    expect(strange(root)).toEqual([]);
    element.remove();
  }
});

it('says what may be released', async () => {
  const course = [
    { opening: 'A', version: 1, against: [] },
    { opening: 'B', version: 1, against: ['servidor'] },
  ];
  for (const over of [
    { connected: false },
    { connected: true, waiting: true },
    { connected: true },
    { connected: true, state: { version: 1, against: ['servidor'], course: [] }, told: 'servidor' },
    { connected: true, state: { version: 1, against: [], course } },
    { connected: true, state: { version: 1, against: [], course: course.map((one) => ({ ...one, against: [] })) } },
  ]) {
    const { element, root } = await drawnWith('release-offer', { opening: 'A', version: 1, ...over });
    expect(strange(root)).toEqual([]);
    element.remove();
  }
});

it('says how to read a wall, and the theme', async () => {
  const drawn = wall();
  for (const one of drawn.courses.flatMap((course) => course.openings)) one.progress = one.words = 'servidor';
  const spoken = drawn.courses.flatMap((one) => one.openings).flatMap((one) => [one.words, one.progress, one.opening]);
  for (const [name, over] of [
    ['opening-key', { handed: true }],
    ['facade-drawing', { wall: drawn }],
    ['theme-switch', {}],
  ] as const) {
    const { element, root } = await drawnWith(name, over);
    expect(strange(root, [...spoken, drawn.title, drawn.heading])).toEqual([]);
    element.remove();
  }
});

it('says the hours of a wall, read at every one', async () => {
  const said = ['Mon Tue Apr to', strip().title, strip().heading];
  const { element, root } = await drawnWith('forecast-strip', { strip: strip(), hint: 'servidor' });
  root.querySelector('details')?.dispatchEvent(new Event('toggle'));
  for (let at = 0; at < strip().length; at += 60) {
    Object.assign(element, { at, read: true });
    await element.updateComplete;
    expect(strange(root, said)).toEqual([]);
    expect(strange(wrapped(root.querySelector('.track')?.getAttribute('aria-valuetext') ?? ''), said)).toEqual([]);
  }
});

function wrapped(text: string): ParentNode {
  const root = document.createElement('div');
  root.innerHTML = '<p></p>';
  (root.firstElementChild as HTMLElement).textContent = text;
  return root;
}

it('says how water runs, and how planning goes', async () => {
  const points = [
    { seconds: 1, cost: 900, unplanned: 3 },
    { seconds: 8, cost: 700, unplanned: 0 },
  ];
  const run = { id: '1', status: 'running', words: 'servidor', seconds: 10, ofSeconds: 30, moves: 4, cost: 600 };
  for (const [name, over] of [
    ['lap-section', { wide: '<svg></svg>', tall: '<svg></svg>', caption: 'servidor' }],
    ['lap-section', { wide: '<svg></svg>', tall: '<svg></svg>', caption: 'servidor', running: false }],
    ['plan-run', { run: { ...run, planned: 1, unplanned: 0, ended: false, points } }],
  ] as const) {
    const { element, root } = await drawnWith(name, over);
    expect(strange(root, ['min'])).toEqual([]);
    element.remove();
  }
});

it('says the week, its visits and what is left out of it', async () => {
  const said = ['Mon Tue Wed Thu Fri Sat Sun Apr', 'window crew', 'siding crew', 'method A', 'free', 'PN', 'PH'];
  const drawn = week(9);
  for (const row of drawn.crews) for (const day of row.days) day.hidden = day.blocks.length ? 0 : 2;
  const { element, root } = await drawnWith('week-sheet', { week: drawn });
  expect(strange(root, said)).toEqual([]);
  element.remove();
  for (const one of [block(), block({ beyond: true, pinned: true })]) {
    const slip = await drawnWith('visit-slip', { block: one, crew: 'W1', day: 'Mon 13 Apr' });
    expect(strange(slip.root, said)).toEqual([]);
    slip.element.remove();
  }
});

it('says the odds of a plan', async () => {
  const day = (label: string, sky: string) => ({ label, chance: 0.5, sky });
  const days = [day('15 Apr', 'forecast'), day('16 Apr', 'climate')];
  const marks = [5, 8, 9].map((ofTen) => ({ ofTen, at: 1, words: 'servidor' }));
  const cells = [{ chance: 0.7, error: 0.01, words: 'servidor' }, null];
  const openings = [{ opening: 'A', place: 'servidor', wet: 0.1, error: 0.01, rainedOn: 0.3, words: 'servidor' }];
  for (const [name, odds] of [
    ['handover-odds', { title: 'Pier Hall', days, marks, due: 1, dueWords: 'servidor' }],
    ['crew-day-odds', { days, crews: [{ crew: 'W1', cells }] }],
    ['wet-odds', { openings, more: 3 }],
  ] as const) {
    const { element, root } = await drawnWith(name, { odds });
    expect(texts(root).length).toBeGreaterThan(4);
    expect(strange(root)).toEqual([]);
    element.remove();
  }
});

it('says a season, through or not', async () => {
  const month = (left: number) => ({
    ...{ label: 'Apr', year: '2026', name: 'Apr', light: 150, usable: 80, low: 60, high: 90 },
    left,
  });
  for (const months of [
    [month(9), month(0)],
    [month(9), month(4)],
  ]) {
    const season = { title: 'Pier Hall', months, due: 0.5, dueWords: 'servidor' };
    const { element, root } = await drawnWith('season-chart', { season });
    expect(texts(root).length).toBeGreaterThan(8);
    expect(strange(root)).toEqual([]);
    element.remove();
  }
});

it('says the frame of the steps, whatever the line is like', () => {
  for (const line of ['kept', 'no-line', 'signed-out', 'others', 'trouble'])
    for (const known of [[], [{ folder: 1, opening: 'A', words: 'servidor' }]]) {
      const page = new StepsPage();
      Object.assign(page, { line, known, language: 'es', entries: [markAt('A', 'RO')] });
      const root = document.createElement('div');
      render(page.render(), root);
      expect(texts(root)).toContain(sayIn('es')(words('My day')));
      expect(strange(root)).toEqual([]);
    }
});

it('says what the rough opening was found to be', () => {
  for (const rough of [
    { mayMeasure: true },
    { mayMeasure: false, grade: 'report', words: 'servidor', meaning: 'servidor', by: 'Ada' },
  ] as const) {
    const root = document.createElement('div');
    render(roughLine(sayIn('es'), here(), rough), root);
    expect(texts(root).join(' ')).toMatch(/vano/i);
    expect(strange(root)).toEqual([]);
  }
});

it('says the caution as the rest of the house does', () => {
  const caution = Object.entries(SENTENCES).filter(([english]) => english.startsWith('A dry hour is never'));
  expect(caution).toHaveLength(1);
  expect(caution[0]?.[1]).toContain('trabajo en altura');
});
