import { beforeEach, expect, it } from 'vitest';
import { StepOutbox, openingName, rememberOpening } from './step-outbox';
import { lineOf, markAt, opening, photoAt } from './step-sample';
import type { Entry, MarkAnswer, StepStore } from './step-records';

/** A phone's database in memory: what was written outlives the outbox, as it outlives a page. */
class Memory implements StepStore {
  rows: Entry[] = [];
  known = new Map<string, unknown>();
  private last = 0;

  entries(): Promise<Entry[]> {
    return Promise.resolve([...this.rows].sort((a, b) => (a.seq ?? 0) - (b.seq ?? 0)));
  }
  add(entry: Entry): Promise<void> {
    this.rows.push({ ...entry, seq: ++this.last });
    return Promise.resolve();
  }
  replace(entry: Entry): Promise<void> {
    this.rows = this.rows.map((row) => (row.seq === entry.seq ? entry : row));
    return Promise.resolve();
  }
  remove(seq: number): Promise<void> {
    this.rows = this.rows.filter((row) => row.seq !== seq);
    return Promise.resolve();
  }
  revise<T>(name: string, how: (known: T | undefined) => T | undefined): Promise<void> {
    const next = how(this.known.get(name) as T | undefined);
    if (next !== undefined) this.known.set(name, next);
    return Promise.resolve();
  }
  recall<T>(name: string): Promise<T | undefined> {
    return Promise.resolve(this.known.get(name) as T | undefined);
  }
  remember(name: string, what: unknown): Promise<void> {
    this.known.set(name, what);
    return Promise.resolve();
  }
  forget(prefix: string): Promise<void> {
    for (const name of [...this.known.keys()]) if (name.startsWith(prefix)) this.known.delete(name);
    return Promise.resolve();
  }
}

/** A server that takes each key once, refuses the lines it is told to, and fails as it is told to. */
class Server {
  log: string[] = [];
  keys = new Set<string>();
  person = 1;
  fail: ((address: string) => Response | 'down' | 'down after' | undefined) | undefined;
  refuses = new Map<string, MarkAnswer>();
  bad = new Set<string>();

  readonly fetch = async (address: string, init?: RequestInit): Promise<Response> => {
    const failure = this.fail?.(address);
    if (failure === 'down') throw new TypeError('no line');
    if (failure instanceof Response) return failure;
    const answer = this.answer(address, init);
    if (failure === 'down after') throw new TypeError('the line broke before the answer');
    return answer;
  };

  private answer(address: string, init?: RequestInit): Response {
    if (address === '/api/me') return json({ id: this.person, name: 'Ada', role: 'x', header: 'X-XSRF', token: 't' });
    expect((init?.headers as Record<string, string>)['X-XSRF']).toBe('t');
    if (address === '/api/photos') {
      const key = String((init?.body as FormData).get('key'));
      return this.once(key, `photo ${key}`) ? json({ id: key }, 201) : json({ id: key });
    }
    const marks = JSON.parse(String(init?.body)) as { key: string; opening: string; line: string }[];
    if (marks.some((mark) => this.bad.has(mark.key))) return json({ detail: 'cannot be read' }, 400);
    return json(
      marks.map((mark) => {
        const refused = this.refuses.get(mark.key);
        if (refused) return refused;
        const fresh = this.once(mark.key, `${mark.opening} ${mark.line}`);
        return fresh
          ? { key: mark.key, outcome: 'marked', version: this.log.length }
          : { key: mark.key, outcome: 'already' };
      }),
    );
  }

  private once(key: string, words: string): boolean {
    if (this.keys.has(key)) return false;
    this.keys.add(key);
    this.log.push(words);
    return true;
  }
}

function json(body: unknown, status = 200): Response {
  return new Response(JSON.stringify(body), { status, headers: { 'Content-Type': 'application/json' } });
}

let store: Memory;
let server: Server;
const outbox = (): StepOutbox => new StepOutbox(store, server.fetch);

beforeEach(() => {
  store = new Memory();
  server = new Server();
});

it('sends marks and photos in the order in which they were made, photos before the marks that show them', async () => {
  await store.add(markAt('A', 'RO'));
  await store.add(photoAt('A', 'p1'));
  await store.add(markAt('A', 'APR', { photoIds: ['p1'] }));
  await store.add(markAt('B', 'RO'));
  expect(await outbox().send()).toBe('kept');
  expect(server.log).toEqual(['A RO', 'photo p1', 'A APR', 'B RO']);
  expect(store.rows).toEqual([]);
});

it('keeps everything while there is no line, and sends it once after the page was loaded anew', async () => {
  const marks = Array.from({ length: 120 }, (_, i) => markAt(`O${i % 7}`, `L${i}`));
  for (const mark of marks) await store.add(mark);
  server.fail = () => 'down';
  expect(await outbox().send()).toBe('no-line');
  expect(store.rows).toHaveLength(120);
  server.fail = undefined;
  expect(await outbox().send()).toBe('kept');
  expect(server.log).toEqual(marks.map((mark) => `${mark.opening} ${mark.line}`));
});

it('doubles nothing when the line breaks after the server has written but before it has answered', async () => {
  await store.add(markAt('A', 'RO'));
  await store.add(markAt('A', 'APR'));
  server.fail = (address) => (address === '/api/marks' ? 'down after' : undefined);
  expect(await outbox().send()).toBe('no-line');
  expect(store.rows).toHaveLength(2);
  server.fail = undefined;
  await outbox().send();
  expect(server.log).toEqual(['A RO', 'A APR']);
  expect(store.rows).toEqual([]);
});

it('sends once though asked twice at a time', async () => {
  await store.add(markAt('A', 'RO'));
  const one = outbox();
  await Promise.all([one.send(), one.send()]);
  expect(server.log).toEqual(['A RO']);
});

it('sends again what is asked for while a sending fails, since the line may be back by then', async () => {
  await store.add(markAt('A', 'RO'));
  server.fail = () => 'down';
  const box = outbox();
  const first = box.send();
  server.fail = undefined;
  await Promise.all([first, box.send()]);
  expect(server.log).toEqual(['A RO']);
  expect(store.rows).toEqual([]);
});

it('sends what was kept after a sending had looked for the last time', async () => {
  const box = outbox();
  const look = store.entries.bind(store);
  let late: Promise<unknown> | undefined;
  store.entries = async () => {
    const seen = await look();
    late ??= store.add(markAt('A', 'RO')).then(() => box.send());
    return seen;
  };
  await box.send();
  await late;
  expect(server.log).toEqual(['A RO']);
});

it('keeps a refused mark with its reason and its drawing, sends the others, and never sends it again', async () => {
  const wrong = markAt('A', 'JF');
  server.refuses.set(wrong.key, { key: wrong.key, outcome: 'refused', words: 'reverse lap', svg: '<svg/>' });
  for (const mark of [markAt('A', 'RO'), wrong, markAt('B', 'RO')]) await store.add(mark);
  await outbox().send();
  server.refuses.clear();
  await outbox().send();
  expect(server.log).toEqual(['A RO', 'B RO']);
  expect(store.rows).toMatchObject([{ line: 'JF', refusal: { words: 'reverse lap', svg: '<svg/>' } }]);
});

it('lets one mark that cannot be read hold up no other', async () => {
  const odd = markAt('A', 'odd');
  server.bad.add(odd.key);
  for (const mark of [markAt('A', 'RO'), odd, markAt('A', 'APR')]) await store.add(mark);
  expect(await outbox().send()).toBe('kept');
  expect(server.log).toEqual(['A RO', 'A APR']);
  expect(store.rows).toMatchObject([{ line: 'odd', refusal: { words: 'cannot be read' } }]);
});

it('keeps a photo that is one too many for the day, sends what is behind it, and the photo once its time has come', async () => {
  for (const entry of [photoAt('A', 'p1'), markAt('A', 'APR', { photoIds: ['p1'] }), markAt('B', 'RO')])
    await store.add(entry);
  server.fail = (address) => (address === '/api/photos' ? json({ detail: 'enough for today' }, 429) : undefined);
  let now = Date.parse('2026-04-13T19:00:00Z');
  const box = new StepOutbox(store, server.fetch, undefined, () => now);
  expect(await box.send()).toBe('kept');
  expect(server.log).toEqual(['A APR', 'B RO']);
  expect(store.rows).toMatchObject([{ key: 'p1', refusal: { words: 'enough for today' } }]);

  server.fail = undefined;
  now += 59 * 60 * 1000;
  await box.send();
  expect(store.rows).toHaveLength(1);
  now += 60 * 1000;
  await box.send();
  expect(server.log).toEqual(['A APR', 'B RO', 'photo p1']);
  expect(store.rows).toHaveLength(0);
});

it('keeps everything and asks to sign in when the session is over', async () => {
  await store.add(markAt('A', 'RO'));
  server.fail = () => json({}, 401);
  expect(await outbox().send()).toBe('signed-out');
  expect(store.rows).toHaveLength(1);
});

it('keeps everything while the server has trouble, and says so', async () => {
  await store.add(markAt('A', 'RO'));
  server.fail = (address) => (address === '/api/marks' ? json({}, 503) : undefined);
  expect(await outbox().send()).toBe('trouble');
  expect(store.rows).toMatchObject([{ line: 'RO' }]);
  expect(store.rows[0]?.refusal).toBeUndefined();
});

it('sends under no other name what one person marked', async () => {
  await store.add(markAt('A', 'RO'));
  server.person = 2;
  expect(await outbox().send()).toBe('others');
  expect(server.log).toEqual([]);
  server.person = 1;
  expect(await outbox().send()).toBe('kept');
  expect(server.log).toEqual(['A RO']);
});

it('shows the next person none of the openings that the last one saw', async () => {
  await outbox().send();
  await store.remember(openingName(7, 'A'), opening());
  server.person = 2;
  await outbox().send();
  expect(await store.recall(openingName(7, 'A'))).toBeUndefined();
});

it('notes what was sent in what the phone knows, for a line that breaks right after', async () => {
  await store.remember(openingName(7, 'A'), opening());
  await store.add(markAt('A', 'RO'));
  await outbox().send();
  const known = await store.recall<ReturnType<typeof opening>>(openingName(7, 'A'));
  expect(known?.lines.find((line) => line.code === 'RO')?.done).toBe(true);
  expect(lineOf(opening(), 'RO').done).toBe(false);
});

it('does not go back to what the server said before it took a mark', async () => {
  const before = opening({ version: 0 });
  await rememberOpening(store, before);
  await store.add(markAt('A', 'RO'));
  await outbox().send();
  await rememberOpening(store, before);
  const known = await store.recall<typeof before>(openingName(7, 'A'));
  expect(known && lineOf(known, 'RO').done).toBe(true);
  await rememberOpening(store, opening({ version: 2, released: true }));
  expect((await store.recall<typeof before>(openingName(7, 'A')))?.released).toBe(true);
});
