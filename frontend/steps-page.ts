import './steps-page.css';
import './step-marker';
import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import { resized } from './photo-size';
import { ReleaseDesk } from './release-desk';
import './release-offer';
import { roughLine } from './rough-line';
import { shared } from './shared';
import { sayIn, speechOf, words, type Say } from './speech';
import type { StepDeeds } from './step-marker';
import { StepOutbox, openingName, rememberOpening, type Line } from './step-outbox';
import type { Entry, Me, OpeningNow, Release, ReleaseState, RoughNow, WaitingMark } from './step-records';
import { PhoneStore } from './step-store';
import { stepsPageStyles } from './steps-page.styles';

const AGAIN_MS = 15_000;
const LINE_WORDS: Record<Line, string> = {
  kept: '',
  'no-line': words('No connection. Marks wait here and are sent when it is back.'),
  'signed-out': words('Sign in again; your marks are kept.'),
  others: words('Marks of someone else wait on this phone; they are sent when that person signs in here.'),
  trouble: words('The server has trouble. Marks wait here and are sent again soon.'),
};

const CAUTION = words(
  "A dry hour is never a statement that work at height is safe. The competent person on site decides; local codes and the manufacturer's instructions come first.",
);

/** One opening of the day, or the list of those that this phone knows. */
interface Known {
  folder: number;
  opening: string;
  words: string;
}

/** The page that works without a connection: everything goes to the phone's database first. */
@customElement('steps-page')
export class StepsPage extends LitElement {
  static override styles = [shared, stepsPageStyles];

  @state() private opening: OpeningNow | undefined;
  @state() private entries: Entry[] = [];
  @state() private sections: Record<string, string> = {};
  @state() private line: Line = 'kept';
  @state() private trouble = '';
  @state() private known: Known[] = [];
  @state() private rough: RoughNow | undefined;
  @state() private release: ReleaseState | undefined;
  @state() private told = '';
  @state() private releasing = false;
  /** Of whoever this phone knows, else the browser's. */
  @state() private language = navigator.language.startsWith('es') ? 'es' : 'en';
  /** Whether the server was asked since the opening was chosen. */
  @state() private settled = false;
  private desk = new ReleaseDesk((address, init) => fetch(address, init), this.say());
  private store!: PhoneStore;
  private outbox!: StepOutbox;
  private photoIds: string[] = [];
  private looks = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.start();
  }

  override render(): TemplateResult {
    // what is within is made anew in another language
    return html`${keyed(this.language, this.page())}`;
  }

  private page(): TemplateResult {
    const say = speechOf(this);
    const waiting = this.entries.filter((entry) => !entry.refusal).length;
    return html`
      <header>
        <a href="/my-day">${say('My day')}</a>
        <a href="#">${say('Openings')}</a>
      </header>
      <p class="caution">${say(CAUTION)}</p>
      <div role="status" aria-live="polite">
        ${
          waiting > 0 || this.line !== 'kept'
            ? html`<div class="wait">
                ${waiting > 0 ? html`<p class="count"><b>${waiting}</b> ${say('waiting on this phone')}</p>` : nothing}
                ${this.line === 'kept' ? nothing : html`<p>${say(LINE_WORDS[this.line])}</p>`}
                ${this.line === 'signed-out' ? html`<a href="/crew/steps.html?enter">${say('Sign in')}</a>` : nothing}
              </div>`
            : nothing
        }
        ${this.trouble ? html`<p class="wait">${this.trouble}</p>` : nothing}
      </div>
      ${
        this.opening
          ? html`${roughLine(say, this.opening, this.rough)}<step-marker
                .opening=${this.opening}
                .entries=${this.entries}
                .sections=${this.sections}
                @mark=${(event: CustomEvent<StepDeeds['mark']>) => this.mark(event.detail.line.code, 'done')}
                @undo=${(event: CustomEvent<StepDeeds['undo']>) =>
                  this.mark(event.detail.line.code, 'undone', event.detail.reason)}
                @photo=${(event: CustomEvent<StepDeeds['photo']>) => this.takePhoto(event.detail.file)}
                @dismiss=${(event: CustomEvent<StepDeeds['dismiss']>) => this.dismiss(event.detail.seq)}
                >${this.offer(this.opening)}</step-marker
              >`
          : this.asked() && !this.settled
            ? html`<p>${say('Fetching the opening.')}</p>`
            : this.list()
      }
    `;
  }

  /** Asks each time anew: who is signed in may read otherwise. */
  private say(): Say {
    return (sentence, ...parts) => sayIn(this.language)(sentence, ...parts);
  }

  /** The page is said in the language of whoever this phone knows. */
  private async speak(): Promise<void> {
    this.language = (await this.store.recall<Me>('me'))?.language ?? this.language;
    document.documentElement.lang = this.language;
    document.title = `${sayIn(this.language)('Steps')} · Drylap`;
  }

  /** Drawings hold words. */
  private sectionsOf(opening: OpeningNow): string {
    return this.language === 'en' ? `sections/${opening.variant}` : `sections/${this.language}/${opening.variant}`;
  }

  /** So does what a rough opening comes to. */
  private roughOf(asked: { folder: number; opening: string }): string {
    const name = openingName(asked.folder, asked.opening);
    return this.language === 'en' ? `rough/${name}` : `rough/${this.language}/${name}`;
  }

  private offer(opening: OpeningNow): TemplateResult | typeof nothing {
    if (opening.released || !opening.lines.some((line) => line.release && line.yours)) return nothing;
    return html`<release-offer
      .opening=${opening.opening}
      .version=${opening.version}
      .state=${this.release}
      .told=${this.told}
      ?connected=${this.line === 'kept' || this.line === 'others'}
      ?waiting=${this.entries.some((entry) => !entry.refusal && entry.opening === opening.opening)}
      ?busy=${this.releasing}
      @release=${(event: CustomEvent<Release[]>) => this.releaseAll(event.detail)}
    ></release-offer>`;
  }

  private list(): TemplateResult {
    const say = speechOf(this);
    return html`<h1>${say('Openings')}</h1>
      ${this.known.length === 0 ? html`<p>${say('No opening on this phone yet. Open one from My day.')}</p>` : nothing}
      <ul>
        ${this.known.map(
          (one) => html`<li><a href="#${one.folder}/${encodeURIComponent(one.opening)}">${one.words}</a></li>`,
        )}
      </ul>`;
  }

  private async start(): Promise<void> {
    if ('serviceWorker' in navigator) void navigator.serviceWorker.register('/crew/sw.js').catch(() => undefined);
    this.store = await PhoneStore.open();
    this.outbox = new StepOutbox(this.store, (address, init) => fetch(address, init), this.say());
    await this.speak();
    await navigator.storage?.persist?.();
    addEventListener('hashchange', () => void this.turn());
    addEventListener('online', () => void this.refresh());
    addEventListener('visibilitychange', () => document.visibilityState === 'visible' && void this.refresh());
    setInterval(() => void this.refresh(), AGAIN_MS);
    await this.turn();
  }

  /** What the phone knows first, then what the server says. */
  private async turn(): Promise<void> {
    this.photoIds = [];
    this.trouble = this.told = '';
    this.release = undefined;
    this.settled = false;
    await this.showKept();
    await this.refresh();
    this.settled = true;
    await this.showKept();
  }

  private asked(): { folder: number; opening: string } | undefined {
    const found = /^#(\d+)\/(.+)$/.exec(location.hash);
    return found?.[1] && found[2] ? { folder: Number(found[1]), opening: decodeURIComponent(found[2]) } : undefined;
  }

  /**
   * All at once, and never what was read before something newer was asked for: a mark that has gone from what waits before the
   * opening tells of it, or is not among what waits yet, would look undone for a moment.
   */
  private async showKept(): Promise<void> {
    const look = ++this.looks;
    const asked = this.asked();
    const entries = await this.store.entries();
    const known = (await this.store.recall<Known[]>('known')) ?? [];
    const kept = asked ? await this.store.recall<OpeningNow>(openingName(asked.folder, asked.opening)) : undefined;
    const rough = asked && (await this.store.recall<RoughNow>(this.roughOf(asked)));
    const sections = (kept && (await this.store.recall<Record<string, string>>(this.sectionsOf(kept)))) ?? {};
    if (look !== this.looks) return;
    this.entries = entries;
    this.known = known;
    this.sections = sections;
    this.rough = rough;
    this.opening = kept;
    if (asked && !kept && this.settled)
      this.trouble = speechOf(this)('Opening {0} is not on this phone yet; it needs a connection once.', asked.opening);
    else this.trouble = '';
  }

  private async refresh(): Promise<void> {
    this.line = await this.outbox.send();
    await this.speak();
    const asked = this.asked();
    if (this.line !== 'no-line' && this.line !== 'signed-out') {
      if (asked) await this.fetchOpening(asked);
      await this.fetchDay();
    }
    await this.showKept();
  }

  private async fetchOpening(asked: { folder: number; opening: string }): Promise<void> {
    const where = `${asked.folder}/${encodeURIComponent(asked.opening)}`;
    const now = await this.get<OpeningNow>(`/api/openings/${where}`);
    if (!now) return;
    if (asked.opening === this.asked()?.opening) this.release = await this.releaseState(now, where);
    await rememberOpening(this.store, now);
    const rough = await this.get<RoughNow>(`/api/rough-openings/${where}`);
    if (rough) await this.store.remember(this.roughOf(asked), rough);
    const name = this.sectionsOf(now);
    if ((await this.store.recall(name)) !== undefined) return;
    const drawn = await this.get<Record<string, string>>(`/api/lap-sections/${now.variant}?language=${this.language}`);
    if (drawn) await this.store.remember(name, drawn);
  }

  /** Asked only where the person could release at all. */
  private async releaseState(now: OpeningNow, where: string): Promise<ReleaseState | undefined> {
    const theirs = !now.released && now.lines.some((line) => line.release && line.yours);
    return theirs ? this.get<ReleaseState>(`/api/releases/${where}`) : undefined;
  }

  /** Never kept for later: what may be released depends on how it stands at the server. */
  private async releaseAll(openings: Release[]): Promise<void> {
    const me = await this.store.recall<Me>('me');
    if (!this.opening || !me || this.releasing) return;
    this.releasing = true;
    this.told = await this.desk.release(me, this.opening.folder, openings);
    await this.refresh();
    this.releasing = false;
  }

  /** The openings of the day come along, so that any of them opens without a connection. */
  private async fetchDay(): Promise<void> {
    const day = await this.get<Known[]>('/api/day');
    if (!day) return;
    const before = (await this.store.recall<Known[]>('known')) ?? [];
    await this.store.remember('known', day);
    const had = new Set(before.map((one) => openingName(one.folder, one.opening)));
    for (const one of day) if (!had.has(openingName(one.folder, one.opening))) await this.fetchOpening(one);
  }

  private async get<T>(address: string): Promise<T | undefined> {
    try {
      const answer = await fetch(address, { headers: { Accept: 'application/json' }, cache: 'no-cache' });
      return answer.ok ? ((await answer.json()) as T) : undefined;
    } catch {
      return undefined;
    }
  }

  private async mark(code: string, kind: 'done' | 'undone', reason?: string): Promise<void> {
    const line = this.opening?.lines.find((one) => one.code === code);
    const common = await this.common();
    if (!line || !common) return;
    const mark: WaitingMark = {
      ...common,
      sort: 'mark',
      line: code,
      text: line.text,
      kind,
      markedAt: new Date().toISOString(),
      photoIds: this.photoIds,
      ...(reason ? { reason } : {}),
    };
    this.photoIds = [];
    await this.keep(mark);
  }

  private async takePhoto(file: File): Promise<void> {
    const common = await this.common();
    if (!common) return;
    try {
      const small = await resized(file);
      this.photoIds = [...this.photoIds, common.key];
      await this.keep({ ...common, sort: 'photo', takenAt: new Date().toISOString(), file: small });
    } catch {
      this.trouble = speechOf(this)('That file is no photo that this phone can read. Accepted: JPEG, PNG, WebP.');
    }
  }

  private async common(): Promise<
    Pick<WaitingMark, 'key' | 'person' | 'personName' | 'folder' | 'opening'> | undefined
  > {
    const me = await this.store.recall<Me>('me');
    if (!this.opening || !me) return undefined;
    const { folder, opening } = this.opening;
    return { key: crypto.randomUUID(), person: me.id, personName: me.name, folder, opening };
  }

  private async keep(entry: Entry): Promise<void> {
    await this.store.add(entry);
    await this.showKept();
    void this.refresh();
  }

  private async dismiss(seq: number): Promise<void> {
    await this.store.remove(seq);
    await this.showKept();
  }
}
