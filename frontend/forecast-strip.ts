import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { hoursTable, skyRows } from './forecast-strip.rows';
import { stripStyles } from './forecast-strip.styles';
import { readingAt } from './forecast-strip.words';
import { place, shared, taskMark, TASKS } from './shared';
import { speechOf } from './speech';
import type { Span, Strip } from './view-records';

const HOUR = 60;

/** One facade's days: rain, wind, cold, dark, and the hours that are open for each task, with a reading under the pointer. */
@customElement('forecast-strip')
export class ForecastStrip extends LitElement {
  static override styles = [shared, stripStyles];

  @property({ attribute: false }) strip: Strip | undefined;
  @property() hint = '';
  @state() private at: number | undefined;
  @state() private read = false;

  override render(): TemplateResult | typeof nothing {
    const strip = this.strip;
    if (!strip) return nothing;
    const say = speechOf(this);
    const sky = skyRows(strip, say);
    return html`<div class="strip">
        <div class="names" aria-hidden="true">
          <div class="top"></div>
          ${sky.map(
            (row) =>
              html`<div class="tall">
                <div>${row.name} <small>${row.scale}</small></div>
              </div>`,
          )}
          ${strip.tasks.map((t) => html`<div>${taskMark(t.task)} ${say(TASKS[t.task].name)}</div>`)}
        </div>
        ${this.renderTrack(strip, sky)}
      </div>
      <p class="reading">${this.renderReading(strip)}</p>
      <details @toggle=${(e: Event) => (this.read = (e.currentTarget as HTMLDetailsElement).open)}>
        <summary>${say('Hour by hour: {0}', strip.title)}</summary>
        ${
          this.read
            ? html`<div class="table" tabindex="0" role="group" aria-label=${say('Hours of {0}', strip.title)}>
                ${hoursTable(strip, say)}
              </div>`
            : nothing
        }
      </details>
      <div class="unseen">
        ${strip.tasks.map(
          (t) =>
            html`<p>
              ${say('{0} is open: {1}', say(TASKS[t.task].name), t.words.length ? t.words.join('; ') : say('at no hour'))}
            </p>`,
        )}
      </div>`;
  }

  private renderTrack(strip: Strip, sky: ReturnType<typeof skyRows>): TemplateResult {
    const say = speechOf(this);
    const all = { from: 0, until: strip.length };
    const under = (span: Span, kind: string) =>
      html`<span class="sky ${kind}" style=${place(span, all) ?? 'display:none'}></span>`;
    return html`<div
      class="track"
      role="slider"
      tabindex="0"
      aria-label=${say('Hour read on the strip of {0}', strip.title)}
      aria-valuemin="0"
      aria-valuemax=${Math.floor(strip.length / HOUR) - 1}
      aria-valuenow=${Math.floor((this.at ?? 0) / HOUR)}
      aria-valuetext=${readingAt(strip, this.at ?? 0, say)}
      @pointermove=${(e: PointerEvent) => this.readAt(e, strip)}
      @pointerleave=${() => (this.at = undefined)}
      @keydown=${(e: KeyboardEvent) => this.onKey(e, strip)}
      @focus=${() => (this.at ??= 0)}
    >
      ${strip.dark.map((d) => under(d, 'dark'))}
      ${strip.forecastEnd < strip.length ? under({ from: strip.forecastEnd, until: strip.length }, 'beyond') : nothing}
      <div class="dates">
        ${strip.days.map((d) => html`<span style="left:${(d.from / strip.length) * 100}%">${d.label}</span>`)}
      </div>
      ${sky.map((row) => html`<div class="row tall ${row.kind}">${row.bars}</div>`)}
      ${strip.tasks.map(
        (t) =>
          html`<div class="row ${t.task}">
            ${t.spans.map((s) => html`<span class="open" style=${place(s, all) ?? 'display:none'}></span>`)}
          </div>`,
      )}
      ${strip.days.map((d) => html`<span class="day" style="left:${(d.from / strip.length) * 100}%"></span>`)}
      ${this.at === undefined ? nothing : html`<span class="now" style="left:${(this.at / strip.length) * 100}%"></span>`}
    </div>`;
  }

  private renderReading(strip: Strip): TemplateResult {
    if (this.at === undefined) return html`${this.hint}`;
    const [when, ...rest] = readingAt(strip, this.at, speechOf(this)).split(': ');
    return html`<b>${when}</b> ${rest.join(': ')}`;
  }

  private readAt(event: PointerEvent, strip: Strip): void {
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
    const share = Math.min(0.9999, Math.max(0, (event.clientX - box.left) / box.width));
    this.at = Math.floor((share * strip.length) / 15) * 15;
  }

  private onKey(event: KeyboardEvent, strip: Strip): void {
    const step = { ArrowRight: HOUR, ArrowLeft: -HOUR, PageDown: 24 * HOUR, PageUp: -24 * HOUR }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    this.at = Math.min(strip.length - HOUR, Math.max(0, (this.at ?? 0) + step));
  }
}
