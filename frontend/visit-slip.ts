import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { shared, taskMark, TASKS } from './shared';
import { speechOf } from './speech';
import type { Block } from './view-records';

/** What a crew does at one course in one go: opening by opening, with times. */
@customElement('visit-slip')
export class VisitSlip extends LitElement {
  static override styles = [
    shared,
    css`
      section {
        padding: 0.65rem 0.9rem 0.75rem;
        background: var(--raised);
        border: 1px solid var(--task);
        border-inline-start-width: 5px;
        border-radius: 3px;
        box-shadow: 0 -6px 18px -12px #0008;
      }
      header {
        display: flex;
        gap: 0.6rem;
        align-items: center;
      }
      h3 {
        flex: 1;
        margin: 0;
        font-size: 1.02rem;
        font-weight: 600;
      }
      p {
        margin: 0.2rem 0 0.5rem;
        color: var(--ink-soft);
        font-size: 0.88rem;
      }
      ul {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 21rem), 1fr));
        gap: 0.2rem 1.2rem;
        max-height: 9.5rem;
        overflow-y: auto;
        margin: 0;
        padding: 2px;
        list-style: none;
        font-size: 0.88rem;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        gap: 0.6rem;
        align-items: baseline;
        padding-block: 2px;
        border-block-end: 1px solid var(--line);
      }
      li .wall {
        padding: 0;
        border: 0;
        background: none;
        font-weight: 600;
        color: var(--accent);
        text-decoration: underline;
        text-underline-offset: 2px;
        white-space: nowrap;
      }
      time {
        white-space: nowrap;
      }
      li span {
        flex: 1 1 10rem;
        color: var(--ink-soft);
      }
      li .move {
        min-height: 1.75rem;
        margin-inline-start: auto;
        padding-inline: 0.5rem;
        white-space: nowrap;
        border: 1px solid var(--line-strong);
        border-radius: 3px;
        background: var(--raised);
      }
      .shut {
        min-height: 2rem;
        min-width: 2rem;
        border: 1px solid var(--line-strong);
        border-radius: 3px;
        background: var(--raised);
      }
    `,
  ];

  @property({ attribute: false }) block: Block | undefined;
  @property() crew = '';
  @property() day = '';

  override render(): TemplateResult | typeof nothing {
    const block = this.block;
    if (!block) return nothing;
    const say = speechOf(this);
    return html`<section class=${block.task} aria-label=${say('Visit')} aria-live="polite">
      <header>
        ${taskMark(block.task)}
        <h3>${say(TASKS[block.task].name)}: ${say('{0}, {1}, level {2}', block.site, block.facade, block.level)}</h3>
        <button class="shut" aria-label=${say('Close the visit')} @click=${() => this.tell('slip-shut', {})}>×</button>
      </header>
      <p>
        ${say('Crew {0}', this.crew)}, ${this.day},
        ${say('{0} to {1}', block.fromText, block.untilText)}${block.pinned ? `, ${say('pinned')}` : ''}
        ${
          block.beyond
            ? html`<b>· ${say('beyond the forecast: climate only, no rain is known for it yet')}</b>`
            : nothing
        }
      </p>
      <ul>
        ${block.items.map(
          (item) =>
            html`<li>
              <button class="wall" @click=${() => this.tell('opening-chosen', { opening: item.opening })}>
                ${item.opening}
              </button>
              <time>${item.from}–${item.until}</time>
              <span
                >${item.words}${
                  item.beyond && !block.items.every((i) => i.beyond) ? ` · ${say('beyond the forecast')}` : ''
                }</span
              >
              <button
                class="move"
                aria-label=${say('Move or pin: {0} of {1}', say(TASKS[block.task].name), item.opening)}
                @click=${() => this.tell('visit-chosen', { opening: item.opening, task: block.task })}
              >
                ${say('Move or pin')}
              </button>
            </li>`,
        )}
      </ul>
    </section>`;
  }

  private tell(name: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }
}
