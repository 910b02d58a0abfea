import { english, words, type Say } from './speech';
import type { Entry, MarkAnswer, Me, OpeningNow, Refusal, StepStore, WaitingMark, WaitingPhoto } from './step-records';

/** As many as the server takes at once is 200; fewer make each sending short on a bad line. */
const MOST = 50;
/** How long what the server takes later waits until it is sent again. */
const LATER_MS = 60 * 60 * 1000;

/**
 * `kept`: nothing waits, or nothing of this person's; `no-line`: the server cannot be reached; `signed-out`: it does not
 * know who asks; `others`: what waits was marked by someone else, who must sign in to send it; `trouble`: it answers, but
 * not as it should, and is asked again later.
 */
export type Line = 'kept' | 'no-line' | 'signed-out' | 'others' | 'trouble';

type Fetch = (address: string, init?: RequestInit) => Promise<Response>;

/** What the server says before it knows who asks stands in English. */
words('not allowed, or the page is too old: load it anew');

class SignedOut extends Error {}
class Trouble extends Error {}

/** Sends what waits, in its order, each once however often it is tried; what is not taken stays, with the reason. */
export class StepOutbox {
  private sending: Promise<Line> | undefined;
  private asked = false;

  constructor(
    private readonly store: StepStore,
    private readonly fetch: Fetch,
    private readonly say: Say = english,
    private readonly now: () => number = Date.now,
  ) {}

  /**
   * One sending at a time on this page. Who asks meanwhile waits for one that begins after: the first may have looked before the
   * mark was kept, or before the line was back.
   */
  send(): Promise<Line> {
    this.asked = true;
    this.sending ??= this.sendWhileAsked();
    return this.sending;
  }

  private async sendWhileAsked(): Promise<Line> {
    let line: Line = 'kept';
    try {
      while (this.asked) {
        this.asked = false;
        line = await this.sendAll();
      }
      return line;
    } finally {
      this.sending = undefined;
    }
  }

  async whoAmI(): Promise<Me> {
    const answer = await this.ask('/api/me');
    if (!answer.ok) throw new Trouble();
    const me = (await answer.json()) as Me;
    const before = await this.store.recall<Me>('me');
    if (before && before.id !== me.id) await this.store.forget('opening/');
    await this.store.remember('me', me);
    return me;
  }

  private async sendAll(): Promise<Line> {
    try {
      const me = await this.whoAmI();
      for (;;) {
        const waiting = (await this.store.entries()).filter((entry) => this.isDue(entry));
        const mine = waiting.filter((entry) => entry.person === me.id);
        const first = mine[0];
        if (!first) return waiting.length > 0 ? 'others' : 'kept';
        if (first.sort === 'photo') await this.sendPhoto(me, first);
        else await this.sendMarks(me, upToPhoto(mine));
      }
    } catch (failure) {
      if (failure instanceof SignedOut) return 'signed-out';
      return failure instanceof Trouble ? 'trouble' : 'no-line';
    }
  }

  private async sendMarks(me: Me, marks: WaitingMark[]): Promise<void> {
    const body = JSON.stringify(marks.map(asSent));
    const answer = await this.ask('/api/marks', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', [me.header]: me.token },
      body,
    });
    if (answer.ok) return this.settle(marks, (await answer.json()) as MarkAnswer[]);
    if (answer.status !== 400) throw new Trouble();
    // one that cannot be read holds up the rest, and which one it is shows when they go one by one
    const alone = marks[0];
    if (marks.length === 1 && alone) return this.refuse(alone, await problem(answer, this.say));
    for (const mark of marks) await this.sendMarks(me, [mark]);
  }

  private async settle(marks: WaitingMark[], answers: MarkAnswer[]): Promise<void> {
    for (const mark of marks) {
      const answer = answers.find((one) => one.key === mark.key);
      if (!answer) throw new Trouble();
      if (answer.outcome === 'refused')
        await this.refuse(mark, {
          words: answer.words ?? this.say('refused'),
          ...(answer.svg ? { svg: answer.svg } : {}),
        });
      else {
        await this.noteDown(mark, answer.version);
        await this.store.remove(seqOf(mark));
      }
    }
  }

  /** What is sent no longer waits, and still shows on a phone that loses the line before it could ask again. */
  private noteDown(mark: WaitingMark, version?: number): Promise<void> {
    const { line: code, kind, markedAt: at, personName: by } = mark;
    return this.store.revise<OpeningNow>(openingName(mark.folder, mark.opening), (known) => {
      if (!known) return undefined;
      const lines = known.lines.map((line) =>
        line.code !== code ? line : kind === 'done' ? { ...line, done: true, at, by } : { ...line, done: false },
      );
      return { ...known, lines, version: version ?? known.version };
    });
  }

  private async sendPhoto(me: Me, photo: WaitingPhoto): Promise<void> {
    const form = new FormData();
    form.set('key', photo.key);
    form.set('folder', String(photo.folder));
    form.set('opening', photo.opening);
    form.set('takenAt', photo.takenAt);
    form.set('file', photo.file, 'photo.jpg');
    const answer = await this.ask('/api/photos', { method: 'POST', headers: { [me.header]: me.token }, body: form });
    if (answer.ok) return this.store.remove(seqOf(photo));
    if (answer.status >= 500) throw new Trouble();
    const refusal = await problem(answer, this.say);
    // enough for today: what stands behind it in the row need not wait for tomorrow
    await this.refuse(photo, answer.status === 429 ? { ...refusal, again: this.now() + LATER_MS } : refusal);
  }

  private isDue({ refusal }: Entry): boolean {
    return !refusal || (refusal.again !== undefined && refusal.again <= this.now());
  }

  private refuse(entry: Entry, refusal: Refusal): Promise<void> {
    return this.store.replace({ ...entry, refusal });
  }

  private async ask(address: string, init: RequestInit = {}): Promise<Response> {
    const headers = { Accept: 'application/json', ...(init.headers as Record<string, string> | undefined) };
    const answer = await this.fetch(address, { ...init, headers, cache: 'no-store', credentials: 'same-origin' });
    if (answer.status === 401) throw new SignedOut();
    return answer;
  }
}

export function openingName(folder: number, opening: string): string {
  return `opening/${folder}/${opening}`;
}

/** What the server said of an opening; an answer that was on its way while a newer mark was taken is left aside. */
export function rememberOpening(store: StepStore, now: OpeningNow): Promise<void> {
  return store.revise<OpeningNow>(openingName(now.folder, now.opening), (known) =>
    !known || now.version >= known.version ? now : undefined,
  );
}

function upToPhoto(entries: Entry[]): WaitingMark[] {
  const photo = entries.findIndex((entry) => entry.sort === 'photo');
  return entries.slice(0, Math.min(photo < 0 ? entries.length : photo, MOST)) as WaitingMark[];
}

function asSent(mark: WaitingMark): object {
  const { key, folder, opening, line, kind, markedAt, photoIds, reason } = mark;
  return { key, folder, opening, line, kind, markedAt, photoIds, ...(reason ? { reason } : {}) };
}

function seqOf(entry: Entry): number {
  if (entry.seq === undefined) throw new Error('an entry that was never stored');
  return entry.seq;
}

/** What a problem document says, in words. */
export async function problem(answer: Response, say: Say = english): Promise<Refusal> {
  const bare = say('refused ({0})', answer.status);
  try {
    const said = (await answer.json()) as { detail?: string; errors?: { field: string; problem: string }[] };
    const fields = (said.errors ?? []).map((one) => `${one.field} ${one.problem}`);
    return { words: [say(said.detail ?? bare), ...fields].join(' ') };
  } catch {
    return { words: bare };
  }
}
