import { expect, it } from 'vitest';
import { ReleaseDesk } from './release-desk';
import './release-offer';
import type { ReleaseOffer } from './release-offer';
import { shown } from './sample';
import type { Me, Release } from './step-records';

const ME: Me = { id: 1, name: 'Ada', role: 'window-crew', header: 'X-XSRF-TOKEN', token: 't' };
const READY = { version: 5, against: [], course: [{ opening: 'A', version: 5, against: [] as string[] }] };

async function offer(over: object): Promise<{ root: ShadowRoot; told: Release[][] }> {
  const { element, root } = await shown<ReleaseOffer>('release-offer', {
    opening: 'A',
    version: 4,
    connected: true,
    state: READY,
    ...over,
  });
  const told: Release[][] = [];
  element.addEventListener('release', (event) => told.push((event as CustomEvent<Release[]>).detail));
  return { root, told };
}

it('releases one opening on the version that the person looks at', async () => {
  const { root, told } = await offer({});
  root.querySelector<HTMLButtonElement>('button')?.click();
  expect(told).toEqual([[{ opening: 'A', version: 4 }]]);
});

it('says why it may not be released, and offers no button then', async () => {
  const { root } = await offer({ state: { ...READY, against: ['still to do: head flashing'] } });
  expect(root.textContent).toContain('still to do: head flashing');
  expect(root.querySelector('button')).toBeNull();
});

it('asks for the connection, and for waiting marks to go first', async () => {
  const without = await offer({ connected: false });
  expect(without.root.textContent).toContain('needs the connection');
  expect(without.root.querySelector('button')).toBeNull();
  const waiting = await offer({ waiting: true });
  expect(waiting.root.textContent).toContain('First the marks');
  expect(waiting.root.querySelector('button')).toBeNull();
});

it('offers the course once all of it is ready, and names what is not', async () => {
  const b = { opening: 'B', version: 9, against: ['still to do: window set'] };
  const some = await offer({ state: { ...READY, course: [...READY.course, b] } });
  expect(some.root.textContent).toContain('B: still to do: window set');
  expect(some.root.querySelectorAll('button')).toHaveLength(1);
  const all = await offer({ state: { ...READY, course: [...READY.course, { ...b, against: [] }] } });
  all.root.querySelectorAll<HTMLButtonElement>('button')[1]?.click();
  expect(all.told).toEqual([
    [
      { opening: 'A', version: 4 },
      { opening: 'B', version: 9 },
    ],
  ]);
});

it('keeps the key of a release that nobody answered, and takes a new one after an answer', async () => {
  const keys: string[] = [];
  let fail = true;
  const desk = new ReleaseDesk((_, init) => {
    keys.push((JSON.parse(String(init?.body)) as { key: string }).key);
    if (fail) return Promise.reject(new TypeError('no line'));
    return Promise.resolve(Response.json({ outcome: 'not-yet', words: 'A: still to do', hindrances: [] }));
  });
  const openings = [{ opening: 'A', version: 4 }];
  expect(await desk.release(ME, 7, openings)).toContain('No answer');
  fail = false;
  expect(await desk.release(ME, 7, openings)).toBe('Not released. A: still to do');
  await desk.release(ME, 7, openings);
  expect(keys[1]).toBe(keys[0]);
  expect(keys[2]).not.toBe(keys[1]);
});
