import { LitElement, html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { drawGlyph, glyphPatterns, glyphStyles } from './glyph';
import { openingKeyStyles } from './opening-key.styles';
import { shared } from './shared';
import type { Glyph } from './view-records';

const KEY_GLYPH: Glyph = {
  opening: '',
  widthMm: 1,
  heightMm: 1,
  progress: '',
  words: '',
  rating: '',
  water: false,
  apron: 'later',
  pan: 'none',
  window: 'later',
  jambs: 'later',
  head: 'later',
  flap: 'none',
  wrap: 'later',
  second: 'none',
  clad: 'later',
  edgeHeld: false,
  hand: null,
};

const ON: Partial<Glyph> = { apron: 'on', jambs: 'on', head: 'on', window: 'on', pan: 'on' };
const TUCKED: Partial<Glyph> = { ...ON, wrap: 'on', edgeHeld: true };

const LAYERS: [string, Partial<Glyph>][] = [
  ['not begun', {}],
  ['layers on, laps missing (hatched)', { apron: 'on', pan: 'on', window: 'on', jambs: 'missing', head: 'missing' }],
  ['water would enter', { water: true, apron: 'on', jambs: 'missing', head: 'missing' }],
  ['all laps on, apron edge free', ON],
  ['wrapped', TUCKED],
  ['clad', { ...TUCKED, clad: 'on' }],
];

const HANDS: [string, Partial<Glyph>][] = [
  ['not released', { hand: 'not-released' }],
  ['released, yours to accept', { ...ON, hand: 'released' }],
  ['released before the log', { ...ON, hand: 'released-before' }],
  ['accepted', { ...ON, hand: 'accepted' }],
  ['returned to the window crew', { ...ON, hand: 'returned' }],
];

/** Only what this wall can show: hand-over marks where it has any. */

/** How to read a drawn opening: its layers and, where hands change, in whose hands it is. */
@customElement('opening-key')
export class OpeningKey extends LitElement {
  static override styles = [shared, glyphStyles, openingKeyStyles];

  @property({ type: Boolean }) handed = false;

  override render(): TemplateResult {
    const samples = this.handed ? [...LAYERS, ...HANDS] : LAYERS;
    return html`<ul class="key" aria-label="How to read the openings">
      ${samples.map(
        ([words, parts]) =>
          html`<li>
            <svg width="30" height="32" viewBox="0 0 52 57" aria-hidden="true">
              ${glyphPatterns} ${drawGlyph({ ...KEY_GLYPH, ...parts }, 26, 26)}
            </svg>
            ${words}
          </li>`,
      )}
    </ul>`;
  }
}
