import { describe, expect, it } from 'vitest';

/* Contrast ratio as WCAG 2.2 defines it: relative luminance in sRGB, (lighter + 0.05) / (darker + 0.05). */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((i) => {
    const c = parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

/* theme.css as text, put here by vitest.config.ts: Vaadin's type check knows no node:fs. */
declare const THEME_CSS: string;

function token(name: string): [string, string] {
  const found = new RegExp(`--${name}: light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\)`).exec(THEME_CSS);
  if (!found?.[1] || !found[2]) throw new Error(`no colour --${name} in theme.css`);
  return [found[1], found[2]];
}

const PAPERS = ['paper', 'sheet', 'raised'];
const TEXT: [string, string[]][] = [
  [
    'ink',
    [...PAPERS, 'rain-wash', 'install-wash', 'test-wash', 'wrap-wash', 'clad-wash', 'alarm-wash', 'bare', 'dark-wash'],
  ],
  ['ink-soft', PAPERS],
  ['accent', PAPERS],
  ['on-accent', ['accent']],
  ['alarm', [...PAPERS, 'alarm-wash']],
  ['good', ['sheet', 'good-wash']],
];
/* Edges and marks that carry meaning: WCAG 2.2 criterion 1.4.11 asks for 3 : 1. */
const MARKS: [string, string[]][] = [
  ['line-strong', PAPERS],
  ['focus', PAPERS],
  ['rain', ['sheet', 'rain-wash']],
  ['install', ['sheet', 'install-wash']],
  ['test', ['sheet', 'test-wash']],
  ['wrap', ['sheet', 'wrap-wash']],
  ['clad', ['sheet', 'clad-wash', 'bare']],
  ['layer', ['bare']],
];

function measured(pairs: [string, string[]][]): [string, string, number, number][] {
  return pairs.flatMap(([front, backs]) =>
    backs.map((back): [string, string, number, number] => {
      const [f, b] = [token(front), token(back)];
      return [front, back, contrast(f[0], b[0]), contrast(f[1], b[1])];
    }),
  );
}

describe('the theme', () => {
  it('measures contrast as the standard does', () => {
    // black on white is 21 : 1 by definition; #767676 on white is the well-known lightest grey that passes 4.5
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
    expect(contrast('#767676', '#ffffff')).toBeGreaterThan(4.5);
    expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
  });

  it.each(measured(TEXT))('lets %s be read on %s, by day and by night', (_front, _back, day, night) => {
    expect(day).toBeGreaterThanOrEqual(4.5);
    expect(night).toBeGreaterThanOrEqual(4.5);
  });

  it.each(measured(MARKS))('lets %s be told from %s, by day and by night', (_front, _back, day, night) => {
    expect(day).toBeGreaterThanOrEqual(3);
    expect(night).toBeGreaterThanOrEqual(3);
  });
});
