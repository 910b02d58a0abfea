import { css, nothing, svg, type SVGTemplateResult } from 'lit';
import type { Glyph, HandState, PartState } from './view-records';

/** Room around the opening for what laps over its edge, in drawing units. */
export const MARGIN = { side: 13, top: 17, foot: 14 };
const STRIP = 7;

/** The front view of one opening, `w` by `h` units large; each layer fills as it goes on, and a missing lap is hatched. */
export function drawGlyph(glyph: Glyph, w: number, h: number): SVGTemplateResult {
  const { side: x, top: y } = MARGIN;
  return svg`
    ${wall(glyph, w, h)}
    ${part('apron', glyph.apron, x - STRIP, y + h + 1, w + 2 * STRIP, 8)}
    ${glyph.apron === 'on' ? freeEdge(x - STRIP, y + h + 10, w + 2 * STRIP, glyph.edgeHeld) : nothing}
    ${glyph.window === 'on' ? windowIn(x, y, w, h) : uncut(glyph) ? covered(x, y, w, h) : hole(x, y, w, h)}
    ${pan(glyph.pan, x, y, w, h)}
    ${part('jamb', glyph.jambs, x - STRIP, y - 5, STRIP, h + 11)}
    ${part('jamb', glyph.jambs, x + w, y - 5, STRIP, h + 11)}
    ${part('head', glyph.head, x - STRIP - 2, y - 8, w + 2 * STRIP + 4, 7)}
    ${flap(glyph.flap, x, y, w)}
    ${glyph.water ? waterDrop(x + w / 2, y + h / 2) : nothing}
    ${glyph.hand ? handMark(glyph.hand, x + w - 6, y + h - 6) : nothing}`;
}

/** Who has it: an empty ring, an arrow on its way, a tick, or an arrow that turns back; shapes before colours. */
function handMark(hand: HandState, x: number, y: number): SVGTemplateResult {
  const way: Record<HandState, string> = {
    'not-released': '',
    released: 'M-4.5 0H3.5M0.5 -3.5L4 0L0.5 3.5',
    'released-before': 'M-4.5 0H3.5M0.5 -3.5L4 0L0.5 3.5',
    accepted: 'M-4 0.5L-1.2 3.4L4.2 -3.2',
    returned: 'M4 3.5V0.5A2.6 2.6 0 0 0 1.4 -2H-3.6M-0.8 -4.8L-4 -2L-0.8 0.8',
  };
  return svg`<g class="hand ${hand}" transform="translate(${x} ${y})"><circle r="8"/><path d=${way[hand]}/></g>`;
}

function part(
  name: string,
  state: PartState,
  x: number,
  y: number,
  w: number,
  h: number,
): SVGTemplateResult | typeof nothing {
  if (state === 'none') return nothing;
  return svg`<rect class="part ${name} ${state}" x=${x} y=${y} width=${w} height=${h}/>`;
}

function wall(glyph: Glyph, w: number, h: number): SVGTemplateResult {
  const [width, height] = [w + 2 * MARGIN.side, h + MARGIN.top + MARGIN.foot];
  const skin = glyph.clad === 'on' ? 'clad' : glyph.wrap === 'on' ? 'wrap' : 'bare';
  const second = glyph.second === 'on' && glyph.clad !== 'on';
  return svg`<rect class="wall" width=${width} height=${height}/><rect class="skin ${skin}" width=${width} height=${height}/>
    ${second ? svg`<rect class="skin second" width=${width} height=${height}/>` : nothing}`;
}

function windowIn(x: number, y: number, w: number, h: number): SVGTemplateResult {
  return svg`<rect class="frame" x=${x} y=${y} width=${w} height=${h}/>
    <rect class="glass" x=${x + 3.5} y=${y + 3.5} width=${w - 7} height=${h - 7}/>
    <path class="fine" d="M${x + 3.5} ${y + h / 2}H${x + w - 3.5}M${x + w * 0.2} ${y + h * 0.42}l${w * 0.22} ${-h * 0.22}"/>`;
}

function hole(x: number, y: number, w: number, h: number): SVGTemplateResult {
  return svg`<rect class="hole" x=${x} y=${y} width=${w} height=${h}/>
    <path class="cross" d="M${x} ${y}L${x + w} ${y + h}M${x + w} ${y}L${x} ${y + h}"/>`;
}

/** The barrier is on the wall before the window, and nobody has cut it yet. */
function uncut(glyph: Glyph): boolean {
  return glyph.wrap === 'on' && glyph.flap === 'later';
}

function covered(x: number, y: number, w: number, h: number): SVGTemplateResult {
  return svg`<rect class="covered" x=${x} y=${y} width=${w} height=${h}/>`;
}

/** A trough with its two end dams, seen at the foot of the opening. */
function pan(state: PartState, x: number, y: number, w: number, h: number): SVGTemplateResult | typeof nothing {
  if (state === 'none') return nothing;
  return svg`<path class="pan ${state}" d="M${x + 1} ${y + h - 7}V${y + h - 0.5}H${x + w - 1}V${y + h - 7}"/>`;
}

/** The barrier's flap over the head: held up it stands above the opening, down it covers the head flashing with its cut corners. */
function flap(state: PartState, x: number, y: number, w: number): SVGTemplateResult | typeof nothing {
  if (state === 'none') return nothing;
  const down = `M${x - 12} ${y - 14}H${x + w + 12}L${x + w + 5} ${y - 4}H${x - 5}Z`;
  const up = `M${x - 3} ${y - 9}H${x + w + 3}L${x + w - 3} ${y - 16}H${x + 3}Z`;
  return svg`<path class="part flap ${state}" d=${state === 'on' ? down : up}/>`;
}

function freeEdge(x: number, y: number, w: number, tucked: boolean): SVGTemplateResult {
  return svg`<path class="edge ${tucked ? 'tucked' : 'free'}" d="M${x} ${y}H${x + w}"/>`;
}

function waterDrop(x: number, y: number): SVGTemplateResult {
  return svg`<g class="water" transform="translate(${x - 12} ${y - 12}) scale(1.5)">
    <path d="M8 1.5C10.6 5 12.6 7.6 12.6 10.1a4.6 4.6 0 0 1-9.2 0C3.4 7.6 5.4 5 8 1.5Z"/><path class="mark" d="M8 6v3.6M8 11.4v.9"/></g>`;
}

/** Hatches and boards that the glyph's parts are filled with; one set in each SVG. */
export const glyphPatterns = svg`<defs>
  <pattern id="missing" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="p-missing" d="M1 0V4"/></pattern>
  <pattern id="wrapped" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path class="p-wrap" d="M1 0V9"/></pattern>
  <pattern id="second" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="p-wrap" d="M1 0V9"/></pattern>
  <pattern id="boards" width="10" height="6" patternUnits="userSpaceOnUse"><path class="p-clad" d="M0 5.5H10"/></pattern>
</defs>`;

export const glyphStyles = css`
  svg {
    display: block;
    overflow: visible;
  }
  .wall {
    fill: var(--bare);
  }
  .skin.bare {
    fill: none;
  }
  .skin.wrap {
    fill: url(#wrapped);
  }
  .skin.second {
    fill: url(#second);
  }
  .skin.clad {
    fill: url(#boards);
  }
  .p-missing {
    stroke: var(--alarm);
    stroke-width: 1.4;
  }
  .p-wrap {
    stroke: var(--wrap);
    stroke-width: 0.8;
    opacity: 0.65;
  }
  .p-clad {
    stroke: var(--clad);
    stroke-width: 1;
  }
  .part {
    stroke: var(--ink);
    stroke-width: 1;
  }
  .part.on {
    fill: var(--layer);
  }
  .part.head.on {
    fill: color-mix(in srgb, var(--layer) 72%, var(--ink));
  }
  .part.flap.on {
    fill: var(--wrap-wash);
    stroke: var(--wrap);
  }
  .part.missing {
    fill: url(#missing);
    stroke: var(--alarm);
  }
  .part.later,
  .pan.later {
    fill: none;
    stroke: var(--line-strong);
    stroke-dasharray: 2 2;
  }
  .pan {
    fill: none;
    stroke: var(--ink);
    stroke-width: 2;
  }
  .pan.missing {
    stroke: var(--alarm);
    stroke-width: 1.5;
    stroke-dasharray: 3 2;
  }
  .pan.later {
    stroke-width: 1;
  }
  .edge {
    stroke: var(--ink);
    stroke-width: 1;
  }
  .edge.free {
    stroke-dasharray: 1.5 2.5;
  }
  .frame {
    fill: var(--raised);
    stroke: var(--ink);
    stroke-width: 1.2;
  }
  .glass {
    fill: var(--glass);
    stroke: var(--ink);
    stroke-width: 0.7;
  }
  .fine {
    stroke: var(--ink);
    stroke-width: 0.7;
    fill: none;
  }
  .hole {
    fill: var(--paper);
    stroke: var(--ink);
    stroke-width: 1;
  }
  .covered {
    fill: none;
    stroke: var(--line-strong);
    stroke-dasharray: 4 3;
  }
  .cross {
    stroke: var(--line-strong);
    stroke-width: 0.8;
  }
  .water path {
    fill: var(--alarm);
    stroke: var(--sheet);
    stroke-width: 0.8;
  }
  .water .mark {
    fill: none;
    stroke: var(--sheet);
    stroke-width: 1.5;
  }
  .hand circle {
    fill: var(--sheet);
    stroke: var(--ink);
    stroke-width: 1.2;
  }
  .hand path {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.8;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .hand.not-released circle {
    stroke: var(--line-strong);
    stroke-dasharray: 2 2;
  }
  .hand.released-before circle {
    stroke-dasharray: 2 2;
  }
  .hand.accepted circle {
    fill: var(--good-wash);
    stroke: var(--good);
  }
  .hand.accepted path {
    stroke: var(--good);
  }
  .hand.returned circle {
    fill: var(--alarm-wash);
    stroke: var(--alarm);
  }
  .hand.returned path {
    stroke: var(--alarm);
  }
`;
