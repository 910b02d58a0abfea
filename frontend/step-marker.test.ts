import { afterEach, expect, it, vi } from 'vitest';
import { fitted } from './photo-size';
import { shown } from './sample';
import './step-marker';
import type { StepMarker } from './step-marker';
import { nextOf, restingOn, withWaiting } from './step-order';
import { markAt, opening, photoAt } from './step-sample';

afterEach(() => vi.useRealTimers());

const codes = (lines: { code: string }[]): string[] => lines.map((line) => line.code);

async function marker(over: object = {}): Promise<{ element: StepMarker; root: ShadowRoot; told: CustomEvent[] }> {
  const { element, root } = await shown<StepMarker>('step-marker', { opening: opening(), ...over });
  const told: CustomEvent[] = [];
  for (const name of ['mark', 'undo', 'dismiss'])
    element.addEventListener(name, (event) => told.push(event as CustomEvent));
  return { element, root, told };
}

it('works out whose turn it is from the marks that wait, without asking the server', () => {
  expect(nextOf(withWaiting(opening(), []))?.code).toBe('RO');
  const one = withWaiting(opening(), [markAt('A', 'RO')]);
  expect(nextOf(one)?.code).toBe('APR');
  expect(one.find((line) => line.code === 'JF')?.why).toBe('first: Do APR');
  const all = withWaiting(opening(), [markAt('A', 'RO'), markAt('A', 'APR'), markAt('A', 'JF')]);
  expect(nextOf(all)).toBeUndefined();
  expect(codes(all.filter((line) => line.next))).toEqual(['BAR']);
  expect(all.find((line) => line.release)?.why).toBe('is done by releasing the opening');
});

it('counts neither what another opening waits for nor what was refused', () => {
  expect(nextOf(withWaiting(opening(), [markAt('B', 'RO')]))?.code).toBe('RO');
  expect(nextOf(withWaiting(opening(), [markAt('A', 'RO', { refusal: { words: 'no' } })]))?.code).toBe('RO');
});

it('takes a step back that waits, and names what rests on a step', () => {
  const lines = withWaiting(opening(), [markAt('A', 'RO'), markAt('A', 'RO', { kind: 'undone', reason: 'bent' })]);
  expect(nextOf(lines)?.code).toBe('RO');
  expect(codes(restingOn(withWaiting(opening(), [markAt('A', 'RO'), markAt('A', 'APR')]), 'RO'))).toEqual(['APR']);
});

it('marks the next step with one tap', async () => {
  const { root, told } = await marker();
  root.querySelector<HTMLButtonElement>('.mark-it')?.click();
  expect(told.map((event) => [event.type, event.detail.line.code])).toEqual([['mark', 'RO']]);
});

it('says what waits on this phone, and keeps the tap of a later step from marking', async () => {
  const { root, told } = await marker({ entries: [markAt('A', 'RO')] });
  expect(root.querySelector('li.waiting')?.textContent).toContain('waits on this phone');
  root.querySelectorAll<HTMLButtonElement>('li.later > button').forEach((button) => button.click());
  expect(told).toEqual([]);
});

it('says of a later step what it follows, and all that stands in its way once it is tapped', async () => {
  const { element, root } = await marker();
  const row = [...root.querySelectorAll<HTMLButtonElement>('li.later > button')].find((one) =>
    one.textContent?.includes('Do JF'),
  );
  expect(row?.querySelector('small')?.textContent).toBe('after: Do APR');
  row?.click();
  await element.updateComplete;
  expect(row?.querySelector('small')?.textContent).toBe('would make a reverse lap');
});

it('opens the correction by a long press, and takes a step back with its reason only', async () => {
  vi.useFakeTimers();
  const { element, root, told } = await marker({ entries: [markAt('A', 'RO')] });
  const row = root.querySelector<HTMLButtonElement>('li.done > button');
  row?.dispatchEvent(new Event('pointerdown'));
  await vi.advanceTimersByTimeAsync(700);
  row?.dispatchEvent(new Event('pointerup'));
  row?.click();
  await element.updateComplete;
  const undo = root.querySelector<HTMLButtonElement>('dialog .undo');
  expect(undo?.disabled).toBe(true);
  const words = root.querySelector('textarea');
  if (words) words.value = ' bent ';
  words?.dispatchEvent(new Event('input'));
  await element.updateComplete;
  undo?.click();
  expect(told.map((event) => [event.type, event.detail.reason])).toEqual([['undo', 'bent']]);
});

it('opens the correction without a long press too', async () => {
  const { element, root } = await marker({ entries: [markAt('A', 'RO')] });
  root.querySelector<HTMLButtonElement>('button[aria-label="Correct: Do RO"]')?.click();
  await element.updateComplete;
  expect(root.querySelector('dialog h2')?.textContent).toContain('Do RO');
});

it('shows a refusal with its words and its drawing until it is dismissed', async () => {
  const entry = markAt('A', 'JF', {
    seq: 4,
    refusal: { words: 'reverse lap: JF over APR', svg: '<svg id="lap"></svg>' },
  });
  const { root, told } = await marker({ entries: [entry] });
  expect(root.querySelector('[role=alert] .refused')?.textContent).toContain('reverse lap: JF over APR');
  expect(root.querySelector('#lap')).not.toBeNull();
  root.querySelector<HTMLButtonElement>('.refused button')?.click();
  expect(told.map((event) => event.detail)).toEqual([{ seq: 4 }]);
});

it('tells of a photo that is sent later, which nobody can throw away by mistake', async () => {
  const entry = { ...photoAt('A', 'p1'), seq: 4, refusal: { words: 'enough for today', again: 1 } };
  const { root } = await marker({ entries: [entry] });
  const told = root.querySelector('[role=alert] .refused');
  expect(told?.textContent).toContain('Not sent yet: a photo, opening A');
  expect(told?.textContent).toContain('enough for today');
  expect(told?.querySelector('button')).toBeNull();
});

it('draws the laps after the step whose turn it is', async () => {
  const { element, root } = await marker({ sections: { RO: '<svg id="ro"></svg>', APR: '<svg id="apr"></svg>' } });
  expect(root.querySelector('#ro')).not.toBeNull();
  element.entries = [markAt('A', 'RO')];
  await element.updateComplete;
  expect(root.querySelector('#apr')).not.toBeNull();
});

it('makes photos no larger than 1600 px, and never larger than they are', () => {
  expect(fitted(4032, 3024)).toEqual({ width: 1600, height: 1200 });
  expect(fitted(3024, 4032)).toEqual({ width: 1200, height: 1600 });
  expect(fitted(800, 600)).toEqual({ width: 800, height: 600 });
});
