import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { drawGlyph, glyphPatterns, glyphStyles, MARGIN } from './glyph';
import { shared } from './shared';
import type { Glyph } from './view-records';

/** One opening by itself, as large as its place allows. */
@customElement('opening-glyph')
export class OpeningGlyph extends LitElement {
  static override styles = [
    shared,
    glyphStyles,
    css`
      svg {
        width: 100%;
        height: 100%;
      }
    `,
  ];

  @property({ attribute: false }) glyph: Glyph | undefined;

  override render(): TemplateResult | typeof nothing {
    if (!this.glyph) return nothing;
    const { widthMm, heightMm } = this.glyph;
    const scale = 64 / Math.max(widthMm, heightMm);
    const [w, h] = [widthMm * scale, heightMm * scale];
    return html`<svg
      viewBox="-1 -1 ${w + 2 * MARGIN.side + 2} ${h + MARGIN.top + MARGIN.foot + 2}"
      role="img"
      aria-label=${this.glyph.words}
    >
      ${glyphPatterns} ${drawGlyph(this.glyph, w, h)}
    </svg>`;
  }
}
