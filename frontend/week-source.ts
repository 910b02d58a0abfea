import { html, nothing, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import type { Say } from './speech';
import type { Week } from './view-records';

interface Sheet extends ReactiveControllerHost {
  src: string;
  week: Week;
}

/** Fetches the week of a sheet from the address that the server gave it, and says when it has none to show. */
export class WeekSource implements ReactiveController {
  private address = '';
  private missed = false;

  constructor(private readonly sheet: Sheet) {
    sheet.addController(this);
  }

  hostUpdate(): void {
    if (this.sheet.src === this.address) return;
    this.address = this.sheet.src;
    if (this.address) void this.take();
  }

  /** In place of a week that did not come. */
  notice(say: Say): TemplateResult | typeof nothing {
    if (!this.missed) return nothing;
    return html`<p class="missed" role="alert">
      ${say('The newest week could not be fetched. What stands here may be older.')}
      <button @click=${() => this.take()}>${say('Fetch it again')}</button>
    </p>`;
  }

  private async take(): Promise<void> {
    const { address } = this;
    const week = await weekAt(address);
    if (address !== this.address) return; // a newer one is on its way
    this.missed = week === undefined;
    if (week) this.sheet.week = week;
    this.sheet.requestUpdate();
  }
}

async function weekAt(address: string): Promise<Week | undefined> {
  try {
    const answer = await fetch(address, { headers: { Accept: 'application/json' } });
    return answer.ok ? ((await answer.json()) as Week) : undefined;
  } catch {
    return undefined; // cut off
  }
}
