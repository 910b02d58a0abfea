import { LitElement, css, html, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { shared } from './shared';
import { speechOf } from './speech';

/** Below this the three cuts beside one another cannot be read. */
const NARROWEST_WIDE_PX = 700;

/** The section through the laps, drawn by the rules themselves, with the water running down its path. */
@customElement('lap-section')
export class LapSection extends LitElement {
  static override styles = [
    shared,
    css`
      :host {
        --lap-paper: var(--sheet);
        --lap-text: var(--ink);
        --lap-muted: var(--ink-soft);
        --lap-wall: var(--bare);
        --lap-glass: var(--glass);
        --lap-flashing: var(--install);
        --lap-barrier: var(--wrap);
        --lap-cladding: var(--clad);
        --lap-water: var(--rain);
        --lap-fault: var(--alarm);
        --lap-safe: var(--good);
        --lap-font: var(--type);
      }
      figure {
        margin: 0;
        padding: 0.5rem;
        background: var(--sheet);
        border: 1px solid var(--line-strong);
        border-radius: 3px;
      }
      .drawing {
        overflow-x: auto;
      }
      .drawing svg {
        display: block;
        max-width: 100%;
        height: auto;
        margin-inline: auto;
      }
      .running .water-path {
        stroke-dasharray: 7 6;
        animation: run 0.9s linear infinite;
      }
      @keyframes run {
        to {
          stroke-dashoffset: -13;
        }
      }
      @media (prefers-reduced-motion: reduce) {
        .running .water-path {
          animation: none;
        }
      }
      figcaption {
        display: flex;
        justify-content: space-between;
        align-items: center;
        gap: 0.75rem;
        padding-top: 0.4rem;
        font-size: 0.88rem;
        color: var(--ink-soft);
      }
      button {
        flex: none;
        min-height: 2rem;
        padding: 0 0.7rem;
        border: 1px solid var(--line-strong);
        border-radius: 3px;
        background: var(--raised);
      }
    `,
  ];

  /** Made by the application, never by a person, so both are set as they come. */
  @property({ attribute: false }) wide = '';
  @property({ attribute: false }) tall = '';
  @property() caption = '';
  @state() private running = true;
  @state() private width = NARROWEST_WIDE_PX;
  @query('.drawing') private place!: HTMLElement;
  private drawn = '';
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

  override render(): TemplateResult {
    const say = speechOf(this);
    return html`<figure>
      <div class="drawing ${this.running ? 'running' : ''}"></div>
      <figcaption>
        <span>${this.caption}</span>
        <button @click=${() => (this.running = !this.running)}>
          ${this.running ? say('Hold the water') : say('Let it run')}
        </button>
      </figcaption>
    </figure>`;
  }

  protected override updated(): void {
    const drawing = this.width < NARROWEST_WIDE_PX ? this.tall : this.wide;
    if (drawing !== this.drawn) this.place.innerHTML = drawing;
    this.drawn = drawing;
  }
}
