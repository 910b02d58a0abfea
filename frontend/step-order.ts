import { english, type Say } from './speech';
import type { Entry, OpeningNow, StepLine, WaitingMark } from './step-records';

/** A line as a person sees it: as the server knows it, with what waits on this phone. */
export interface ShownLine extends StepLine {
  /** Marked here, not sent yet. */
  waiting: boolean;
  /** The last of the lines that come first. */
  after?: string;
}

function concerns(opening: OpeningNow): (entry: Entry) => entry is WaitingMark {
  return (entry): entry is WaitingMark =>
    entry.sort === 'mark' &&
    entry.folder === opening.folder &&
    entry.opening === opening.opening &&
    entry.refusal === undefined;
}

/** Lays the waiting marks over the lines that the server knows, and works out anew whose turn it is. */
export function withWaiting(opening: OpeningNow, entries: Entry[], say: Say = english): ShownLine[] {
  const waiting = entries.filter(concerns(opening));
  const done = new Set(opening.lines.filter((line) => line.done).map((line) => line.code));
  const here = new Map<string, WaitingMark>();
  for (const mark of waiting) {
    if (mark.kind === 'done') done.add(mark.line);
    else done.delete(mark.line);
    here.set(mark.line, mark);
  }
  return opening.lines.map((line) => {
    const { why: said, at, by, ...rest } = line;
    const mark = here.get(line.code);
    const isDone = done.has(line.code);
    const first = line.waitsFor.filter((code) => !done.has(code));
    const next = !isDone && !line.release && first.length === 0;
    const why = isDone || next ? undefined : waiting.length === 0 && said ? said : whyNot(opening, line, first, say);
    const after = why ? opening.lines.findLast((other) => first.includes(other.code))?.text : undefined;
    return {
      ...rest,
      ...(after ? { after } : {}),
      waiting: mark !== undefined,
      done: isDone,
      next,
      ...(why ? { why } : {}),
      ...(at && isDone && !mark ? { at } : {}),
      ...(by && isDone && !mark ? { by } : {}),
      ...(mark && isDone ? { at: mark.markedAt, by: mark.personName } : {}),
    };
  });
}

function whyNot(opening: OpeningNow, line: StepLine, first: string[], say: Say): string {
  if (line.release && first.length === 0) return say('is done by releasing the opening');
  const texts = opening.lines.filter((other) => first.includes(other.code)).map((other) => other.text);
  return say('first: {0}', texts.join('; '));
}

/** The line that one tap marks: the first of this person's trade whose turn it is. */
export function nextOf(lines: ShownLine[]): ShownLine | undefined {
  return lines.find((line) => line.next && line.yours && line.trade !== 'tester');
}

/** Why a done line may not be taken back on its own. */
export function restingOn(lines: ShownLine[], code: string): ShownLine[] {
  return lines.filter((line) => line.done && line.waitsFor.includes(code));
}
