import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { facadeStyles } from './facade-drawing.styles';
import { drawGlyph, glyphPatterns, glyphStyles, MARGIN } from './glyph';
import './opening-key';
import { shared } from './shared';
import { speechOf } from './speech';
import type { Glyph, Wall, WallCourse } from './view-records';

/** A glyph below this many pixels cannot be read or touched; the wall then scrolls sideways instead. */
const SMALLEST_PX = 30;
const LARGEST_SCALE = 0.075;
const GAP_PX = 14;

/** A wall as it stands: courses from the ground up, every opening to scale and in its present state. */
@customElement('facade-drawing')
export class FacadeDrawing extends LitElement {
  static override styles = [shared, glyphStyles, facadeStyles];

  @property({ attribute: false }) wall: Wall | undefined;
  @property() chosen = '';
  /** A page of several walls says once how to read them. */
  @property({ type: Boolean }) keyless = false;
  @state() private width = 900;
  private watcher: ResizeObserver | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.watcher = new ResizeObserver(([entry]) => {
      if (entry && entry.contentRect.width > 0) this.width = entry.contentRect.width;
    });
    this.watcher.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.watcher?.disconnect();
  }

  override render(): TemplateResult | typeof nothing {
    if (!this.wall) return nothing;
    const say = speechOf(this);
    const scale = scaleFor(this.wall, this.width - 84);
    const topDown = [...this.wall.courses].sort((a, b) => b.level - a.level);
    return html`<div
        class="scroll"
        role="group"
        aria-label=${say('{0}, {1}, courses from the top down', this.wall.title, this.wall.heading)}
      >
        <div class="wall-face" @keydown=${this.onKey}>
          ${topDown.map((course) => this.renderCourse(course, scale))}
          <div class="ground"></div>
        </div>
      </div>
      ${this.keyless ? nothing : html`<opening-key .handed=${handed(this.wall)}></opening-key>`}`;
  }

  private renderCourse(course: WallCourse, scale: number): TemplateResult {
    const say = speechOf(this);
    return html`<div class="course ${skinOf(course)}" role="group" aria-label=${say('Level {0}', course.level)}>
      <span class="level">${say('level')}<br />${course.level}</span>
      <div class="row">${course.openings.map((glyph) => this.renderOpening(glyph, scale))}</div>
    </div>`;
  }

  private renderOpening(glyph: Glyph, scale: number): TemplateResult {
    const [w, h] = [glyph.widthMm * scale, glyph.heightMm * scale];
    const [width, height] = [w + 2 * MARGIN.side, h + MARGIN.top + MARGIN.foot];
    const pressed = this.chosen === glyph.opening;
    return html`<button
      class="opening"
      aria-pressed=${pressed}
      aria-label="${glyph.opening}: ${glyph.words}"
      title="${glyph.opening}: ${glyph.words}"
      @click=${() => this.choose(glyph.opening)}
    >
      <svg width=${width} height=${height} viewBox="0 0 ${width} ${height}" aria-hidden="true">
        ${glyphPatterns} ${drawGlyph(glyph, w, h)}
      </svg>
      <span class="tag">${glyph.opening}</span>
      <span class="tag small">${glyph.progress}</span>
    </button>`;
  }

  private choose(opening: string): void {
    this.dispatchEvent(new CustomEvent('opening-chosen', { detail: { opening }, bubbles: true, composed: true }));
  }

  private onKey(event: KeyboardEvent): void {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (step === undefined) return;
    const all = [...this.renderRoot.querySelectorAll<HTMLElement>('.opening')];
    const here = all.indexOf(this.shadowRoot?.activeElement as HTMLElement);
    all[here + step]?.focus();
    event.preventDefault();
  }
}

/** Pixels a millimetre, so that the widest course fills the wall; never so few that an opening cannot be touched. */
export function scaleFor(wall: Wall, room: number): number {
  const fits = wall.courses.map((course) => {
    const glass = course.openings.reduce((sum, o) => sum + o.widthMm, 0);
    const edges = course.openings.length * (2 * MARGIN.side + GAP_PX);
    return Math.max(0, room - edges) / Math.max(1, glass);
  });
  const narrowest = Math.min(...wall.courses.flatMap((c) => c.openings.map((o) => o.widthMm)));
  return Math.max(SMALLEST_PX / narrowest, Math.min(LARGEST_SCALE, ...fits));
}

/** What covers a course from end to end; blank where it is bare or begun only in part. */
function skinOf(course: WallCourse): 'clad' | 'wrapped' | '' {
  const all = (part: 'clad' | 'wrap') => course.openings.every((glyph) => glyph[part] === 'on');
  return all('clad') ? 'clad' : all('wrap') ? 'wrapped' : '';
}

function handed(wall: Wall): boolean {
  return wall.courses.some((course) => course.openings.some((glyph) => glyph.hand));
}
