import { LitElement, html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { drawGlyph, glyphPatterns, glyphStyles } from './glyph';
import { openingKeyStyles } from './opening-key.styles';
import { shared } from './shared';
import { speechOf, words } from './speech';
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
  [words('not begun'), {}],
  [
    words('layers on, laps missing (hatched)'),
    { apron: 'on', pan: 'on', window: 'on', jambs: 'missing', head: 'missing' },
  ],
  [words('water would enter'), { water: true, apron: 'on', jambs: 'missing', head: 'missing' }],
  [words('all laps on, apron edge free'), ON],
  [words('wrapped'), TUCKED],
  [words('clad'), { ...TUCKED, clad: 'on' }],
];

const HANDS: [string, Partial<Glyph>][] = [
  [words('not released'), { hand: 'not-released' }],
  [words('released, yours to accept'), { ...ON, hand: 'released' }],
  [words('released before the log'), { ...ON, hand: 'released-before' }],
  [words('accepted'), { ...ON, hand: 'accepted' }],
  [words('returned to the window crew'), { ...ON, hand: 'returned' }],
];

/** Only what this wall can show: hand-over marks where it has any. */

/** How to read a drawn opening: its layers and, where hands change, in whose hands it is. */
@customElement('opening-key')
export class OpeningKey extends LitElement {
  static override styles = [shared, glyphStyles, openingKeyStyles];

  @property({ type: Boolean }) handed = false;

  override render(): TemplateResult {
    const say = speechOf(this);
    const samples = this.handed ? [...LAYERS, ...HANDS] : LAYERS;
    return html`<ul class="key" aria-label=${say('How to read the openings')}>
      ${samples.map(
        ([meaning, parts]) =>
          html`<li>
            <svg width="30" height="32" viewBox="0 0 52 57" aria-hidden="true">
              ${glyphPatterns} ${drawGlyph({ ...KEY_GLYPH, ...parts }, 26, 26)}
            </svg>
            ${say(meaning)}
          </li>`,
      )}
    </ul>`;
  }
}
