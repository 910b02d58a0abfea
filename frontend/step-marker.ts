import { LitElement, html, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import { shared } from './shared';
import { moment, speechOf, words, type Say } from './speech';
import { stepMarkerStyles } from './step-marker.styles';
import { nextOf, restingOn, withWaiting, type ShownLine } from './step-order';
import type { Entry, OpeningNow } from './step-records';

const LONG_PRESS_MS = 600;
const TICK = svg`<path d="M4 12.5 9.5 18 20 6"/>`;
const NEXT = svg`<path d="M4 12h15M13 6l6 6-6 6"/>`;
const LATER = svg`<circle cx="12" cy="12" r="3"/>`;

/** What a person asks of this screen; the page keeps and sends it. */
export interface StepDeeds {
  mark: { line: ShownLine };
  undo: { line: ShownLine; reason: string };
  photo: { file: File };
  dismiss: { seq: number };
}

/** The lines of one opening, to be marked with one thumb. */
@customElement('step-marker')
export class StepMarker extends LitElement {
  static override styles = [shared, stepMarkerStyles];

  @property({ attribute: false }) opening: OpeningNow | undefined;
  @property({ attribute: false }) entries: Entry[] = [];
  /** The laps after each line, drawn by the rules themselves. */
  @property({ attribute: false }) sections: Record<string, string> = {};
  @state() private correcting: ShownLine | undefined;
  @state() private words = '';
  /** The line whose reason for not being next is told in full. */
  @state() private asked = '';
  @query('dialog') private dialog!: HTMLDialogElement;
  private press: ReturnType<typeof setTimeout> | undefined;
  private pressed = false;

  override render(): TemplateResult | typeof nothing {
    const { opening } = this;
    if (!opening) return nothing;
    const say = speechOf(this);
    const lines = withWaiting(opening, this.entries, say);
    const next = nextOf(lines);
    return html`
      <h1>${opening.opening}</h1>
      <p class="soft">${say('{0}, {1}, level {2}', opening.site, opening.facade, opening.level)}</p>
      <div role="alert">${this.entries.filter((entry) => entry.refusal).map((entry) => this.refused(entry))}</div>
      <div class="sides">
        <div>${this.standing(opening)} <slot></slot> ${this.section(opening, next)}</div>
        <div>
          <h2>${say('Steps')}</h2>
          <ol>
            ${lines.map((line) => this.line(line))}
          </ol>
        </div>
      </div>
      ${this.thumb(next)} ${this.correction(lines)}
    `;
  }

  private standing(opening: OpeningNow): TemplateResult {
    const say = speechOf(this);
    const waits = this.entries.some((entry) => !entry.refusal && entry.opening === opening.opening);
    return html`<section class="card" aria-label=${say('How it stands')}>
      <p class="rating ${opening.rating.mayBeLeft ? 'safe' : 'open'}">${opening.rating.words}</p>
      ${waits ? html`<p class="soft">${say('As it stood before the marks that wait on this phone.')}</p>` : nothing}
      ${
        opening.missingLaps.length > 0
          ? html`<p>${say('Laps missing:')}</p>
              <ul>
                ${opening.missingLaps.map((lap) => html`<li>${lap}</li>`)}
              </ul>`
          : nothing
      }
      <p>${say('Apron: {0}; drains to {1}', opening.apron, opening.drainsTo)}</p>
      ${opening.sun.map((one) => html`<p>${one.words}</p>`)}
      ${opening.released ? html`<p class="rating safe">${say('Released to the trade that follows')}</p>` : nothing}
    </section>`;
  }

  private section(opening: OpeningNow, next: ShownLine | undefined): TemplateResult {
    const say = speechOf(this);
    const drawing = next ? this.sections[next.code] : opening.svg;
    return html`<h2>${next ? say('The laps after this step') : say('The laps as they are')}</h2>
      <div class="drawing card">
        ${drawing ? unsafeHTML(drawing) : html`<p>${say('No drawing on this phone yet; it comes with the next connection.')}</p>`}
      </div>`;
  }

  private line(line: ShownLine): TemplateResult {
    const say = speechOf(this);
    const kind = line.done ? 'done' : line.next && line.yours ? 'next' : 'later';
    return html`<li class="${kind} ${line.waiting ? 'waiting' : ''}">
      <button
        aria-expanded=${kind === 'later' && line.why ? String(this.asked === line.code) : nothing}
        @pointerdown=${() => this.hold(line)}
        @pointerup=${() => this.letGo()}
        @pointercancel=${() => this.letGo()}
        @pointerleave=${() => this.letGo()}
        @contextmenu=${(event: Event) => event.preventDefault()}
        @click=${() => this.tap(line)}
      >
        <svg class="tick" viewBox="0 0 24 24" aria-hidden="true">
          ${line.done ? TICK : kind === 'next' ? NEXT : LATER}
        </svg>
        <span
          ><span class="unseen">${line.done ? say('Done') : kind === 'next' ? say('Now') : say('Later')}: </span
          >${line.text}</span
        >
        <small>${this.under(line, this.asked === line.code)}</small>
      </button>
      ${
        line.done && line.yours && !line.release
          ? html`<button aria-label=${say('Correct: {0}', line.text)} @click=${() => this.correct(line)}>…</button>`
          : nothing
      }
    </li>`;
  }

  private thumb(next: ShownLine | undefined): TemplateResult {
    const say = speechOf(this);
    return html`<div class="thumb">
      <div>
        <span class="step">${next ? next.text : say('Nothing of yours to mark here now.')}</span>
        <button class="mark-it" ?disabled=${!next} @click=${() => next && this.tell('mark', { line: next })}>
          ${say('Mark done')}
        </button>
        <label class="photo"
          >${say('Photo')}<input
            type="file"
            accept="image/*"
            capture="environment"
            aria-label=${say('Take a photo of this opening')}
            @change=${(event: Event) => this.took(event.target as HTMLInputElement)}
        /></label>
      </div>
    </div>`;
  }

  private refused(entry: Entry): TemplateResult {
    const say = speechOf(this);
    const { refusal, seq } = entry;
    const what = entry.sort === 'mark' ? entry.text : say('a photo');
    if (refusal?.again !== undefined)
      return html`<section class="card refused">
        <h2>${say('Not sent yet: {0}, opening {1}', what, entry.opening)}</h2>
        <p>${refusal.words}</p>
      </section>`;
    return html`<section class="card refused">
      <h2>${say('Not taken: {0}, opening {1}', what, entry.opening)}</h2>
      <p>${refusal?.words}</p>
      ${refusal?.svg ? html`<div class="drawing">${unsafeHTML(refusal.svg)}</div>` : nothing}
      <button @click=${() => seq !== undefined && this.tell('dismiss', { seq })}>${say('I have read this')}</button>
    </section>`;
  }

  private correction(lines: ShownLine[]): TemplateResult {
    const say = speechOf(this);
    const line = this.correcting;
    const resting = line ? restingOn(lines, line.code) : [];
    return html`<dialog aria-labelledby="correct" @close=${() => (this.correcting = undefined)}>
      ${
        line
          ? html`<h2 id="correct">${say('Correct: {0}', line.text)}</h2>
              ${
                resting.length > 0
                  ? html`<p>
                      ${say('Other work rests on it. Take back first: {0}', resting.map((one) => one.text).join('; '))}
                    </p>`
                  : html`<label for="why">${say('Why is it not done after all?')}</label>
                      <textarea
                        id="why"
                        maxlength="2000"
                        .value=${this.words}
                        @input=${(event: Event) => (this.words = (event.target as HTMLTextAreaElement).value)}
                      ></textarea>`
              }
              <div class="buttons">
                ${
                  resting.length > 0
                    ? nothing
                    : html`<button class="undo" ?disabled=${!this.words.trim()} @click=${() => this.undo(line)}>
                        ${say('Take this step back')}
                      </button>`
                }
                <button @click=${() => this.dialog.close()}>${say('Leave it as it is')}</button>
              </div>`
          : nothing
      }
    </dialog>`;
  }

  private hold(line: ShownLine): void {
    this.pressed = false;
    if (!line.done || !line.yours || line.release) return;
    this.press = setTimeout(() => {
      this.pressed = true;
      void this.correct(line);
    }, LONG_PRESS_MS);
  }

  private letGo(): void {
    clearTimeout(this.press);
  }

  private tap(line: ShownLine): void {
    if (this.pressed) this.pressed = false;
    else if (line.next && line.yours && line.trade !== 'tester') this.tell('mark', { line });
    else if (!line.done) this.asked = this.asked === line.code ? '' : line.code;
  }

  private async correct(line: ShownLine): Promise<void> {
    this.words = '';
    this.correcting = line;
    await this.updateComplete;
    this.dialog.showModal();
  }

  private undo(line: ShownLine): void {
    this.tell('undo', { line, reason: this.words.trim() });
    this.dialog.close();
  }

  private took(input: HTMLInputElement): void {
    const file = input.files?.[0];
    if (file) this.tell('photo', { file });
    input.value = '';
  }

  private tell<K extends keyof StepDeeds>(name: K, detail: StepDeeds[K]): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }

  private under(line: ShownLine, inFull: boolean): string {
    const say = speechOf(this);
    if (line.done && line.waiting) return say('waits on this phone');
    if (line.done) return [line.by, line.at ? moment(this, line.at) : ''].filter(Boolean).join(', ');
    const turn = whoseTurn(line, inFull, say);
    return line.waiting ? say('taken back, waits on this phone; {0}', turn) : turn;
  }
}

const TRADES = [words('window'), words('tester'), words('wrap'), words('siding')];

function whoseTurn(line: ShownLine, inFull: boolean, say: Say): string {
  if (line.next && line.trade === 'tester') return say('recorded with its result on My day');
  if (line.next && line.yours) return say('now');
  if (line.next) return say('now, by the {0} trade', TRADES.includes(line.trade) ? say(line.trade) : line.trade);
  return line.after && !inFull ? say('after: {0}', line.after) : (line.why ?? '');
}
