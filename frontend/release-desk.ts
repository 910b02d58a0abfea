import { problem } from './step-outbox';
import { english, type Say } from './speech';
import type { Me, Release, ReleaseAnswer } from './step-records';

type Fetch = (address: string, init?: RequestInit) => Promise<Response>;

/** Sends releases, and the same one under the same key until the server has answered it. */
export class ReleaseDesk {
  private unanswered = { what: '', key: '' };

  constructor(
    private readonly fetch: Fetch,
    private readonly say: Say = english,
  ) {}

  /** @returns what became of it, in words; empty where there is nothing to say beyond the new state */
  async release(me: Me, folder: number, openings: Release[]): Promise<string> {
    const what = JSON.stringify([folder, openings]);
    if (this.unanswered.what !== what) this.unanswered = { what, key: crypto.randomUUID() };
    const { key } = this.unanswered;
    try {
      const answer = await this.fetch('/api/releases', {
        method: 'POST',
        headers: { Accept: 'application/json', 'Content-Type': 'application/json', [me.header]: me.token },
        body: JSON.stringify({ key, folder, openings }),
      });
      this.unanswered = { what: '', key: '' };
      return answer.ok
        ? this.said((await answer.json()) as ReleaseAnswer)
        : this.say('Not released. {0}', (await problem(answer, this.say)).words);
    } catch {
      return this.say('No answer. Whether it was released shows when the connection is back.');
    }
  }

  private said(answer: ReleaseAnswer): string {
    if (answer.outcome === 'released' || answer.outcome === 'already') return '';
    return this.say('Not released. {0}', answer.words);
  }
}
