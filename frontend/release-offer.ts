import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { shared } from './shared';
import { speechOf } from './speech';
import type { Release, ReleaseState } from './step-records';

/** Hands one opening, or its course, to the trade that follows; only with a connection, since the server decides. */
@customElement('release-offer')
export class ReleaseOffer extends LitElement {
  static override styles = [
    shared,
    css`
      section {
        margin: 0.7rem 0;
        padding: 0.7rem 0.8rem;
        background: var(--sheet);
        border: 1px solid var(--line-strong);
        border-radius: 3px;
      }
      h2 {
        margin: 0;
        font-size: 1.05rem;
      }
      p,
      ul {
        margin: 0.3rem 0;
      }
      ul {
        padding-inline-start: 1.1rem;
      }
      button {
        width: 100%;
        min-height: 56px;
        margin-top: 0.5rem;
        padding: 0.4rem 0.9rem;
        border: 1px solid var(--line-strong);
        border-radius: 3px;
        background: var(--raised);
        color: var(--ink);
        font-weight: 600;
      }
      summary {
        padding: 0.8rem 0;
        cursor: pointer;
      }
      .told {
        padding: 0.4rem 0.6rem;
        border: 1px solid var(--wrap);
        background: var(--wrap-wash);
      }
    `,
  ];

  @property() opening = '';
  /** The version of the opening that the person looks at. */
  @property({ type: Number }) version = 0;
  @property({ attribute: false }) state: ReleaseState | undefined;
  @property({ type: Boolean }) connected = false;
  /** Marks of this phone that the server does not have yet. */
  @property({ type: Boolean }) waiting = false;
  @property({ type: Boolean }) busy = false;
  @property() told = '';

  override render(): TemplateResult {
    return html`<section aria-labelledby="release">
      <h2 id="release">${speechOf(this)('Release to the next trade')}</h2>
      <div role="alert">${this.told ? html`<p class="told">${this.told}</p>` : nothing}</div>
      ${this.body()}
    </section>`;
  }

  private body(): TemplateResult {
    const say = speechOf(this);
    if (!this.connected)
      return html`<p>${say('Releasing needs the connection: the server decides by how it stands there.')}</p>`;
    if (this.waiting) return html`<p>${say('First the marks that wait on this phone must be sent.')}</p>`;
    if (!this.state) return html`<p>${say('Asking whether it may be released.')}</p>`;
    if (this.state.against.length > 0)
      return html`<details>
        <summary>${say('Not yet: what stands in the way')}</summary>
        ${list(this.state.against)}
      </details>`;
    return html`${this.button(say('Release {0}', this.opening), [{ opening: this.opening, version: this.version }])}
    ${this.course(this.state)}`;
  }

  private course(state: ReleaseState): TemplateResult | typeof nothing {
    const say = speechOf(this);
    if (state.course.length < 2) return nothing;
    const notYet = state.course.filter((one) => one.against.length > 0);
    if (notYet.length > 0)
      return html`<p>${say('The whole course is not ready:')}</p>
        ${list(notYet.map((one) => `${one.opening}: ${one.against.join('; ')}`))}`;
    const seen = state.course.map(({ opening, version }) => ({
      opening,
      version: opening === this.opening ? this.version : version,
    }));
    return this.button(say('Release the course: {0}', seen.map((one) => one.opening).join(', ')), seen);
  }

  private button(words: string, openings: Release[]): TemplateResult {
    return html`<button
      ?disabled=${this.busy}
      @click=${() => this.dispatchEvent(new CustomEvent<Release[]>('release', { detail: openings }))}
    >
      ${words}
    </button>`;
  }
}

function list(words: string[]): TemplateResult {
  return html`<ul>
    ${words.map((one) => html`<li>${one}</li>`)}
  </ul>`;
}
