import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { nail, place, shared, taskMark, TASKS } from './shared';
import { speechOf } from './speech';
import './visit-slip';
import { weekBlockStyles } from './week-block.styles';
import { carriedMark, hiddenMark } from './week-marks';
import { WeekDrag } from './week-drag';
import { weekKey } from './week-key';
import { weekSheetNarrow } from './week-sheet.narrow';
import { weekSheetStyles } from './week-sheet.styles';
import { WeekSource } from './week-source';
import { blockAt, neighbour, rowsOf, same, type Chosen } from './week-walk';
import { blockInWords, skyInWords } from './week-words';
import type { Block, CrewDay, CrewRow, SheetDay, SkySpan, Span, Week } from './view-records';

const DAYS_SHOWN = 7;
/** Rows drawn at a time: the first are seen at once, the others follow frame by frame. */
const ROWS_AT_ONCE = 24;

/** Crews by days: every visit over the rain and the dark of the site where the crew stands. */
@customElement('week-sheet')
export class WeekSheet extends LitElement {
  static override styles = [shared, weekSheetStyles, weekBlockStyles, weekSheetNarrow];

  /** Where the week is fetched. */
  @property() src = '';
  @property({ attribute: false }) week: Week = { fromHour: 6, untilHour: 18, days: [], crews: [] };
  @state() private first = 0;
  @state() private today = 0;
  @state() private chosen: Chosen | undefined;
  @state() private rowsDrawn = ROWS_AT_ONCE;
  /** Where the tab key enters the sheet. */
  private entry: Chosen | undefined;
  /** The dates on which anybody works. */
  private workdays = new Set<string>();
  private readonly source = new WeekSource(this);
  private readonly drag = new WeekDrag(this, () => this.shown);

  private get shown(): Span {
    return { from: this.week.fromHour * 60, until: this.week.untilHour * 60 };
  }

  private get days(): SheetDay[] {
    return this.week.days.slice(this.first, this.first + DAYS_SHOWN);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('week')) this.fitToWeek(changed.get('week')?.days.length ?? 0);
    this.entry = rowsOf(this.week, this.days)[0]?.[0];
    this.workdays = new Set(this.week.crews.flatMap((crew) => crew.days.filter((d) => d.shift).map((d) => d.date)));
  }

  protected override updated(): void {
    if (this.rowsDrawn < this.week.crews.length)
      requestAnimationFrame(() => setTimeout(() => (this.rowsDrawn += ROWS_AT_ONCE)));
  }

  private fitToWeek(daysBefore: number): void {
    if (daysBefore === 0) this.turnToNow();
    if (this.first >= this.week.days.length) this.first = 0;
    if (this.today >= this.week.days.length) this.today = 0;
    if (!blockAt(this.week, this.chosen)) this.chosen = undefined;
  }

  override render(): TemplateResult {
    const say = speechOf(this);
    return html`${this.source.notice(say)} ${this.renderKey()} ${this.renderDayPicker()}
      <table aria-label=${say('Week sheet, crews by days')} @keydown=${this.onKey}>
        <thead>
          <tr>
            <th class="corner" scope="col">
              <div class="title">${say('Crew')}</div>
              ${this.days[0]?.sites.map((s) => html`<div class="place" title=${s.site}><b>${s.code}</b> ${s.site}</div>`)}
              <div class="hours"></div>
            </th>
            ${this.days.map((day, i) => this.renderDayHead(day, i))}
          </tr>
        </thead>
        <tbody>
          ${this.week.crews.slice(0, this.rowsDrawn).map((crew) => this.renderCrew(crew))}
        </tbody>
      </table>
      ${this.renderSlip()}`;
  }

  private renderKey(): TemplateResult {
    const pages = this.week.days.length > DAYS_SHOWN;
    return html`<div class="bar">${weekKey(speechOf(this))} ${pages ? this.renderTurn() : nothing}</div>`;
  }

  private renderTurn(): TemplateResult {
    const last = Math.min(this.first + DAYS_SHOWN, this.week.days.length) - 1;
    const say = speechOf(this);
    return html`<span class="turn">
      <button
        aria-label=${say('Earlier days')}
        ?disabled=${this.first === 0}
        @click=${() => this.turnTo(this.first - DAYS_SHOWN)}
      >
        ‹
      </button>
      ${say('{0} to {1}', this.week.days[this.first]?.label ?? '', this.week.days[last]?.label ?? '')}
      <button
        aria-label=${say('Later days')}
        ?disabled=${last === this.week.days.length - 1}
        @click=${() => this.turnTo(this.first + DAYS_SHOWN)}
      >
        ›
      </button>
    </span>`;
  }

  /** A sheet opens on the day that it is, where it has that day. */
  private turnToNow(): void {
    const now = new Date();
    const date = [now.getFullYear(), now.getMonth() + 1, now.getDate()]
      .map((n) => String(n).padStart(2, '0'))
      .join('-');
    this.today = Math.max(
      0,
      this.week.days.findIndex((d) => d.date === date),
    );
    this.first = Math.floor(this.today / DAYS_SHOWN) * DAYS_SHOWN;
  }

  private turnTo(first: number): void {
    this.first = Math.max(0, first);
    this.today = this.first;
    this.chosen = undefined;
  }

  private renderDayPicker(): TemplateResult {
    return html`<div class="days" role="group" aria-label=${speechOf(this)('Day shown')}>
      ${this.days.map(
        (day, i) =>
          html`<button aria-pressed=${this.first + i === this.today} @click=${() => (this.today = this.first + i)}>
            ${day.weekday}<small>${day.label}</small>
          </button>`,
      )}
    </div>`;
  }

  private renderDayHead(day: SheetDay, index: number): TemplateResult {
    const hours = [];
    const step = this.week.untilHour - this.week.fromHour > 8 ? 3 : 2;
    for (let h = Math.ceil((this.week.fromHour + 1) / step) * step; h < this.week.untilHour; h += step) hours.push(h);
    const length = this.week.untilHour - this.week.fromHour;
    return html`<th class=${this.dayClass(day, index)} scope="col">
      <div class="title">${day.weekday}<span>${day.label}</span></div>
      ${day.sites.map(
        (s) =>
          html`<div class="place" data-site=${s.site}>
            ${s.sky.map((sky) => this.renderSky(sky))}<span class="unseen"
              >${skyInWords(s.site, s.sky, speechOf(this))}</span
            >
          </div>`,
      )}
      <div class="hours" aria-hidden="true">
        ${
          this.worked(day)
            ? hours.map((h) => html`<span style="left:${((h - this.week.fromHour) / length) * 100}%">${h}</span>`)
            : nothing
        }
      </div>
    </th>`;
  }

  private worked(day: SheetDay): boolean {
    return this.workdays.has(day.date);
  }

  private dayClass(day: SheetDay, index: number): string {
    return `${this.worked(day) ? '' : 'off'} ${this.first + index === this.today ? 'today' : ''}`;
  }

  private renderSky(sky: SkySpan): TemplateResult | typeof nothing {
    const where = place(sky, this.shown);
    return where ? html`<span class="sky ${sky.kind}" style=${where}></span>` : nothing;
  }

  private renderCrew(row: CrewRow): TemplateResult {
    return html`<tr>
      <th scope="row">
        <span class="who">${taskMark(row.task)} ${row.crew}</span>
        <small>${row.trade}</small>
      </th>
      ${this.days.map((day, i) => {
        const crewDay = row.days.find((d) => d.date === day.date);
        return html`<td class=${this.dayClass(day, i)}>${this.renderLane(row, crewDay)}</td>`;
      })}
    </tr>`;
  }

  private renderLane(row: CrewRow, day: CrewDay | undefined): TemplateResult {
    const say = speechOf(this);
    if (!day?.shift)
      return html`<div class="lane" data-crew=${row.crew} data-date=${day?.date ?? ''}>
        <span class="free">${say('off')}</span>${this.renderCarried(row, day)}
      </div>`;
    const rest = day.rest && place(day.rest, this.shown);
    return html`<div class="lane" data-crew=${row.crew} data-date=${day.date}>
      <span class="shift" style=${place(day.shift, this.shown) ?? ''}></span>
      ${day.sky.map((sky) => this.renderSky(sky))}
      ${rest ? html`<span class="rest" style=${rest} title=${say('break')}></span>` : nothing}
      ${day.blocks.length || day.hidden ? nothing : html`<span class="free">${day.idle}</span>`}
      ${day.blocks.map((block, i) => this.renderBlock(row, day, block, i))}
      ${day.hidden ? hiddenMark(day, say) : nothing} ${this.renderCarried(row, day)}
    </div>`;
  }

  private renderCarried(row: CrewRow, day: CrewDay | undefined): TemplateResult | typeof nothing {
    const carried = this.drag.carried;
    const here = carried && carried.crew === row.crew && carried.date === day?.date;
    return here ? carriedMark(carried, this.shown) : nothing;
  }

  private renderBlock(row: CrewRow, day: CrewDay, block: Block, index: number): TemplateResult {
    const here: Chosen = { crew: row.crew, date: day.date, block: index };
    const pressed = same(this.chosen, here);
    const reachable = pressed || (!this.chosen && same(this.entry, here));
    return html`<button
      class="block ${block.task} ${block.beyond ? 'beyond' : ''} ${block.pinned ? 'pinned' : ''}"
      style=${place(block, this.shown) ?? ''}
      aria-pressed=${pressed}
      tabindex=${reachable ? 0 : -1}
      data-at="${row.crew}|${day.date}|${index}"
      @focus=${() => (this.chosen = here)}
      @click=${() => (this.chosen = here)}
      @pointerdown=${(e: PointerEvent) => this.drag.hold(e, block, (e.currentTarget as Element).closest('.lane'))}
    >
      ${block.pinned ? html`<svg class="nail" viewBox="0 0 16 16" aria-hidden="true">${nail}</svg>` : nothing}
      ${block.ticks.map((t) => html`<i class="tick" style="left:${((t - block.from) / (block.until - block.from)) * 100}%"></i>`)}
      <span class="text" aria-hidden="true"
        ><b>${TASKS[block.task].letter}</b><span class="wide"> ${block.facade} ${block.level}</span></span
      >
      <span class="text second" aria-hidden="true"
        >${block.items.length > 1 ? html`×${block.items.length}` : nothing}<span class="wide">
          ${block.beyond ? '?' : ''} ${block.siteCode}</span
        ></span
      >
      <span class="unseen">${blockInWords(row, block, this.dayName(day.date), speechOf(this))}</span>
    </button>`;
  }

  private renderSlip(): TemplateResult | typeof nothing {
    if (!this.chosen) return nothing;
    return html`<visit-slip
      .block=${blockAt(this.week, this.chosen)}
      .crew=${this.chosen.crew}
      .day=${this.dayName(this.chosen.date)}
      @slip-shut=${() => (this.chosen = undefined)}
    ></visit-slip>`;
  }

  private dayName(date: string): string {
    const day = this.week.days.find((d) => d.date === date);
    return day ? `${day.weekday} ${day.label}` : date;
  }

  private onKey(event: KeyboardEvent): void {
    if (event.key === 'Escape') this.chosen = undefined;
    if (event.key === 'Enter' && this.chosen) return this.enter(event, this.chosen);
    const next = neighbour(rowsOf(this.week, this.days), this.chosen, event.key);
    if (!next) return;
    event.preventDefault();
    this.chosen = next;
    this.today = this.week.days.findIndex((d) => d.date === next.date);
    void this.updateComplete.then(() => {
      const at = `${next.crew}|${next.date}|${next.block}`;
      this.renderRoot.querySelector<HTMLElement>(`[data-at="${CSS.escape(at)}"]`)?.focus();
    });
  }

  /** A visit of its own opens at once; of several along a course, the slip is where one is chosen. */
  private enter(event: KeyboardEvent, at: Chosen): void {
    const block = blockAt(this.week, at);
    const [visit] = block?.items ?? [];
    if (!block || !visit) return;
    event.preventDefault();
    if (block.items.length === 1) {
      const detail = { opening: visit.opening, task: block.task };
      this.dispatchEvent(new CustomEvent('visit-chosen', { detail, bubbles: true, composed: true }));
    } else this.renderRoot.querySelector('visit-slip')?.shadowRoot?.querySelector<HTMLElement>('.move')?.focus();
  }
}
