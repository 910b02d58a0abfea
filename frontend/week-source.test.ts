import { afterEach, describe, expect, it, vi } from 'vitest';
import { shown, week } from './sample';
import './week-sheet';
import type { WeekSheet } from './week-sheet';

/** A server with a week of some days at each address; it answers when it is told to. */
class Server {
  readonly asked: string[] = [];
  private readonly waiting = new Map<string, (answer: Response) => void>();

  constructor() {
    vi.stubGlobal('fetch', (address: string) => {
      this.asked.push(address);
      return new Promise<Response>((answer) => this.waiting.set(address, answer));
    });
  }

  async answers(address: string, days: number): Promise<void> {
    const answer = days > 0 ? Response.json(week(days)) : new Response('', { status: 503 });
    this.waiting.get(address)?.(answer);
    await new Promise((over) => setTimeout(over));
  }
}

afterEach(() => vi.unstubAllGlobals());

const notice = (root: ShadowRoot) => root.querySelector('[role=alert]');
const days = (element: WeekSheet) => element.week.days.length;

describe('the week of a sheet', () => {
  it('is fetched from the address that the sheet is given', async () => {
    const server = new Server();
    const { element, root } = await shown<WeekSheet>('week-sheet', { src: 'a/week.json' });
    await server.answers('a/week.json', 3);
    await element.updateComplete;
    expect(root.querySelectorAll('tbody tr')).toHaveLength(2);
    expect(notice(root)).toBeNull();
  });

  it('is the newest, in whichever order the answers come', async () => {
    const server = new Server();
    const { element } = await shown<WeekSheet>('week-sheet', { src: 'a/week.json' });
    element.src = 'b/week.json';
    await element.updateComplete;
    await server.answers('b/week.json', 5);
    await server.answers('a/week.json', 3);
    expect(days(element)).toBe(5);
  });

  it('stays as it was where the server has none, says so, and can be fetched again', async () => {
    const server = new Server();
    const { element, root } = await shown<WeekSheet>('week-sheet', { src: 'a/week.json', week: week(3) });
    await server.answers('a/week.json', 0);
    await element.updateComplete;
    expect(days(element)).toBe(3);
    expect(notice(root)?.textContent).toContain('could not be fetched');
    root.querySelector<HTMLElement>('.missed button')?.click();
    await server.answers('a/week.json', 5);
    await element.updateComplete;
    expect(server.asked).toEqual(['a/week.json', 'a/week.json']);
    expect(days(element)).toBe(5);
    expect(notice(root)).toBeNull();
  });
});
