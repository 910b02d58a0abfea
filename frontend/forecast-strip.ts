import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { place, shared, taskMark, TASKS } from './shared';
import type { Span, Strip } from './view-records';

const HOUR = 60;
/** The height of the rain row is full at this much; heavier rain is no taller, the reading says how much. */
const TALLEST_MM = 4;

/** One facade's week: rain, dark, and the hours that are open for each task, with a reading under the pointer. */
@customElement('forecast-strip')
export class ForecastStrip extends LitElement {
  static override styles = [
    shared,
    css`
      .strip {
        display: grid;
        grid-template-columns: 7.6rem minmax(34rem, 1fr);
        overflow-x: auto;
        background: var(--sheet);
        border: 1px solid var(--line-strong);
        border-radius: 3px;
      }
      .names {
        position: sticky;
        inset-inline-start: 0;
        z-index: 2;
        background: var(--sheet);
        border-inline-end: 1px solid var(--line-strong);
        font: 400 0.82rem/1 var(--type-narrow);
      }
      .names div {
        display: flex;
        align-items: center;
        gap: 0.35rem;
        padding-inline: 0.5rem;
        height: 1.35rem;
      }
      .names .rainy {
        height: 2.4rem;
      }
      .names .top,
      .dates {
        height: 1.35rem;
      }
      .track {
        position: relative;
        touch-action: pan-y;
        cursor: crosshair;
      }
      .dates {
        position: relative;
        border-block-end: 1px solid var(--line);
      }
      .dates span {
        position: absolute;
        padding-inline-start: 5px;
        font: 500 0.8rem/1.35rem var(--type-narrow);
        white-space: nowrap;
      }
      .day {
        position: absolute;
        inset-block: 0;
        width: 1px;
        background: var(--line-strong);
      }
      .row {
        position: relative;
        height: 1.35rem;
        border-block-end: 1px solid var(--line);
      }
      .row.rainy {
        height: 2.4rem;
      }
      .drops {
        position: absolute;
        bottom: 0;
        min-width: 1.5px;
        background: color-mix(in srgb, var(--rain) 45%, transparent);
      }
      .drops.raining {
        background: var(--rain);
      }
      .open {
        position: absolute;
        inset-block: 4px;
        min-width: 2px;
        background: var(--wash);
        border: 1px solid var(--task);
        border-radius: 2px;
      }
      .open::before {
        content: '';
        position: absolute;
        inset: auto 0 0;
        height: 5px;
        background: var(--pattern);
      }
      .now {
        position: absolute;
        inset-block: 0;
        width: 2px;
        margin-inline-start: -1px;
        background: var(--focus);
        pointer-events: none;
      }
      .reading {
        min-height: 1.4rem;
        margin: 0.25rem 0 0;
        font-size: 0.85rem;
        color: var(--ink-soft);
      }
      .reading b {
        color: var(--ink);
        font-weight: 600;
      }
      @media (max-width: 480px) {
        .strip {
          grid-template-columns: 5.9rem minmax(34rem, 1fr);
        }
        .names div {
          padding-inline: 0.3rem;
          gap: 0.2rem;
        }
      }
    `,
  ];

  @property({ attribute: false }) strip: Strip | undefined;
  @property() hint = '';
  @state() private at: number | undefined;

  override render(): TemplateResult | typeof nothing {
    const strip = this.strip;
    if (!strip) return nothing;
    return html`<div class="strip">
        <div class="names" aria-hidden="true">
          <div class="top"></div>
          <div class="rainy">Rain, mm</div>
          ${strip.tasks.map((t) => html`<div>${taskMark(t.task)} ${TASKS[t.task].name}</div>`)}
        </div>
        ${this.renderTrack(strip)}
      </div>
      <p class="reading">${this.renderReading(strip)}</p>
      <div class="unseen">
        ${strip.tasks.map(
          (t) => html`<p>${TASKS[t.task].name} is open: ${t.words.length ? t.words.join('; ') : 'at no hour'}</p>`,
        )}
      </div>`;
  }

  private renderTrack(strip: Strip): TemplateResult {
    const all = { from: 0, until: strip.length };
    const under = (span: Span, kind: string) =>
      html`<span class="sky ${kind}" style=${place(span, all) ?? 'display:none'}></span>`;
    return html`<div
      class="track"
      role="slider"
      tabindex="0"
      aria-label="Hour read on the strip of ${strip.title}"
      aria-valuemin="0"
      aria-valuemax=${Math.floor(strip.length / HOUR) - 1}
      aria-valuenow=${Math.floor((this.at ?? 0) / HOUR)}
      aria-valuetext=${readingAt(strip, this.at ?? 0)}
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
      <div class="row rainy">${strip.rain.map((r) => this.renderRain(r, strip))}</div>
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

  private renderRain(rain: Strip['rain'][number], strip: Strip): TemplateResult | typeof nothing {
    if (rain.mm <= 0) return nothing;
    const where = place({ from: rain.from, until: rain.from + HOUR }, { from: 0, until: strip.length });
    const height = Math.min(1, Math.sqrt(rain.mm / TALLEST_MM)) * 100;
    return where
      ? html`<span class="drops ${rain.raining ? 'raining' : ''}" style="${where};height:${height}%"></span>`
      : nothing;
  }

  private renderReading(strip: Strip): TemplateResult {
    if (this.at === undefined) return html`${this.hint}`;
    const [when, ...rest] = readingAt(strip, this.at).split(': ');
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

/** "Tue 14 Apr 09:00: rain 1.2 mm at 60 %; open for clad; shut for install, water test, wrap". */
export function readingAt(strip: Strip, at: number): string {
  const day = strip.days.findLast((d) => d.from <= at);
  const midnight = day?.from ?? 0;
  const clock = `${pad(Math.floor((at - midnight) / HOUR))}:${pad((at - midnight) % HOUR)}`;
  const open = strip.tasks.filter((t) => t.spans.some((s) => s.from <= at && at < s.until));
  const shut = strip.tasks.filter((t) => !open.includes(t));
  const names = (tasks: Strip['tasks']) => tasks.map((t) => TASKS[t.task].name.toLowerCase()).join(', ');
  return [
    `${day?.label ?? ''} ${clock}: ${skyAt(strip, at)}`,
    open.length ? `open for ${names(open)}` : '',
    shut.length ? `shut for ${names(shut)}` : '',
  ]
    .filter(Boolean)
    .join('; ');
}

function skyAt(strip: Strip, at: number): string {
  if (at >= strip.forecastEnd) return 'beyond the forecast';
  const rain = strip.rain.find((r) => r.from <= at && at < r.from + HOUR);
  const dark = strip.dark.some((d) => d.from <= at && at < d.until) ? ', dark' : '';
  const share = rain ? ` at ${Math.round(rain.probability * 100)} %` : '';
  if (!rain || rain.mm <= 0) return `no rain${dark}`;
  return `${rain.raining ? 'rain' : 'too little to count as rain,'} ${rain.mm.toFixed(1)} mm${share}${dark}`;
}

function pad(n: number): string {
  return String(n).padStart(2, '0');
}
