import { describe, expect, it } from 'vitest';
import { FacadeDrawing, scaleFor } from './facade-drawing';
import type { OpeningKey } from './opening-key';
import { glyph, shown, wall } from './sample';

const drawn = () => shown<FacadeDrawing>('facade-drawing', { wall: wall(), chosen: 'PN1-02' });

describe('a facade drawing', () => {
  it('stands on its lowest course', async () => {
    const { root } = await drawn();
    const labels = [...root.querySelectorAll('.course')].map((c) => c.getAttribute('aria-label'));
    expect(labels).toEqual(['Level 2', 'Level 1']);
  });

  it('covers a course from end to end once all of it is wrapped', async () => {
    const half = { level: 1, openings: [glyph({ wrap: 'on' }), glyph()] };
    const whole = { level: 2, openings: [glyph({ wrap: 'on' }), glyph({ wrap: 'on' })] };
    const { root } = await shown<FacadeDrawing>('facade-drawing', { wall: { ...wall(), courses: [half, whole] } });
    expect([...root.querySelectorAll('.course')].map((c) => c.className.trim())).toEqual(['course wrapped', 'course']);
  });

  it('says of each opening how it stands', async () => {
    const { root } = await drawn();
    expect(root.querySelector('.opening')?.getAttribute('aria-label')).toBe('PN2-01: not begun; open to rain');
  });

  it('presses the chosen opening only', async () => {
    const { root } = await drawn();
    const pressed = [...root.querySelectorAll('.opening[aria-pressed="true"] .tag')].map((t) => t.textContent);
    expect(pressed[0]).toBe('PN1-02');
    expect(pressed).toHaveLength(2);
  });

  it('tells which opening was pointed at', async () => {
    const { element, root } = await drawn();
    const chosen: string[] = [];
    element.addEventListener('opening-chosen', (e) =>
      chosen.push((e as CustomEvent<{ opening: string }>).detail.opening),
    );
    root.querySelector<HTMLElement>('.opening')?.click();
    expect(chosen).toEqual(['PN2-01']);
  });
});

describe('the key of a wall', () => {
  const keyOf = async (over: Partial<Parameters<typeof glyph>[0]>) => {
    const one = { ...wall(), courses: [{ level: 1, openings: [glyph(over)] }] };
    const { root } = await shown<FacadeDrawing>('facade-drawing', { wall: one });
    const key = root.querySelector<OpeningKey>('opening-key');
    await key?.updateComplete;
    return key?.shadowRoot?.textContent;
  };

  it('explains hand-over marks only where the wall has some', async () => {
    expect(await keyOf({ hand: 'released' })).toContain('returned to the window crew');
    expect(await keyOf({ hand: null })).not.toContain('returned to the window crew');
  });

  it('is left to a page that draws several walls', async () => {
    const { root } = await shown<FacadeDrawing>('facade-drawing', { wall: wall(), keyless: true });
    expect(root.querySelector('opening-key')).toBeNull();
  });
});

describe('the scale of a wall', () => {
  it('fits the widest course into the room', () => {
    const scale = scaleFor(wall(), 200);
    const widest = 2 * (1200 * scale + 26 + 14);
    expect(widest).toBeLessThanOrEqual(200.001);
  });

  it('never draws an opening too narrow to touch, however many there are', () => {
    const many = { ...wall(), courses: [{ level: 1, openings: Array.from({ length: 40 }, () => glyph()) }] };
    expect(1200 * scaleFor(many, 300)).toBeCloseTo(30, 6);
  });
});
