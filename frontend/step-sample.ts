/* An opening with a short list for the tests of the steps. */
import type { OpeningNow, StepLine, WaitingMark, WaitingPhoto } from './step-records';

let keys = 0;

export function line(code: string, waitsFor: string[], over: Partial<StepLine> = {}): StepLine {
  return {
    code,
    text: `Do ${code}`,
    trade: 'window',
    installBlock: true,
    yours: true,
    release: false,
    waitsFor,
    done: false,
    next: waitsFor.length === 0,
    ...over,
  };
}

export function opening(over: Partial<OpeningNow> = {}): OpeningNow {
  return {
    folder: 7,
    opening: 'A',
    site: 'Q',
    facade: 'west',
    level: 2,
    variant: 'A_drainage_none',
    version: 0,
    rating: { code: 'R0', words: 'open: rain enters', mayBeLeft: false },
    weaknesses: [],
    missingLaps: ['jamb flashing over apron'],
    apron: 'apron not there',
    drainsTo: 'the first barrier',
    releasable: false,
    released: false,
    lines: [
      line('RO', []),
      line('APR', ['RO']),
      line('JF', ['RO', 'APR'], { why: 'would make a reverse lap' }),
      line('BAR', ['RO', 'APR', 'JF'], { trade: 'wrap', yours: false }),
      line('REL', ['RO', 'APR', 'JF'], { release: true }),
    ],
    sun: [{ layer: 'apron', words: 'apron: 80 of 90 days of sun left', daysLeft: 80 }],
    svg: '<svg class="now"></svg>',
    ...over,
  };
}

export function lineOf(one: OpeningNow, code: string): StepLine {
  const found = one.lines.find((each) => each.code === code);
  if (!found) throw new Error(`no line ${code}`);
  return found;
}

export function markAt(where: string, code: string, over: Partial<WaitingMark> = {}): WaitingMark {
  return {
    sort: 'mark',
    key: `key-${++keys}`,
    person: 1,
    personName: 'Ada',
    folder: 7,
    opening: where,
    line: code,
    text: `Do ${code}`,
    kind: 'done',
    markedAt: '2026-04-13T19:00:00Z',
    photoIds: [],
    ...over,
  };
}

export function photoAt(where: string, key: string): WaitingPhoto {
  return {
    sort: 'photo',
    key,
    person: 1,
    personName: 'Ada',
    folder: 7,
    opening: where,
    takenAt: '2026-04-13T19:00:00Z',
    file: new Blob(['x'], { type: 'image/jpeg' }),
  };
}
