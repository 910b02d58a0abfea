import { describe, expect, it } from 'vitest';
import './opening-glyph';
import type { OpeningGlyph } from './opening-glyph';
import { glyph, shown } from './sample';
import type { Glyph } from './view-records';

async function parts(over: Partial<Glyph>): Promise<ShadowRoot> {
  return (await shown<OpeningGlyph>('opening-glyph', { glyph: glyph(over) })).root;
}

describe('an opening glyph', () => {
  it('fills the layers that are on and hatches the laps that are missing', async () => {
    const root = await parts({ apron: 'on', jambs: 'missing', head: 'missing' });
    expect(root.querySelectorAll('.apron.on')).toHaveLength(1);
    expect(root.querySelectorAll('.jamb.missing')).toHaveLength(2);
    expect(root.querySelectorAll('.head.missing')).toHaveLength(1);
  });

  it('shows a drop only where water would enter', async () => {
    expect((await parts({ water: true })).querySelectorAll('.water')).toHaveLength(1);
    expect((await parts({ water: false })).querySelectorAll('.water')).toHaveLength(0);
  });

  it('shows a crossed hole until the window is set', async () => {
    expect((await parts({ window: 'missing' })).querySelector('.cross')).not.toBeNull();
    expect((await parts({ window: 'on' })).querySelector('.cross')).toBeNull();
  });

  it('shows an uncut barrier over the opening instead of a hole', async () => {
    const root = await parts({ wrap: 'on', flap: 'later' });
    expect(root.querySelector('.covered')).not.toBeNull();
    expect(root.querySelector('.cross')).toBeNull();
  });

  it('draws no pan where the sill is a barrier', async () => {
    expect((await parts({ pan: 'none' })).querySelector('.pan')).toBeNull();
  });

  it('marks the apron edge as free until the wrap is tucked under it', async () => {
    expect((await parts({ apron: 'on' })).querySelector('.edge.free')).not.toBeNull();
    expect((await parts({ apron: 'on', wrap: 'on', edgeHeld: true })).querySelector('.edge.tucked')).not.toBeNull();
  });

  it('crosses the hatch of the wrap where a second barrier lies over it', async () => {
    expect((await parts({ wrap: 'on', second: 'on' })).querySelectorAll('.skin')).toHaveLength(2);
    expect((await parts({ wrap: 'on', second: 'later' })).querySelectorAll('.skin')).toHaveLength(1);
  });

  it('tells who has it by a shape of its own, not by colour alone', async () => {
    const states = ['not-released', 'released', 'accepted', 'returned'] as const;
    const shapes = new Set<string | null | undefined>();
    for (const hand of states) shapes.add((await parts({ hand })).querySelector('.hand path')?.getAttribute('d'));
    expect(shapes.size).toBe(states.length);
    expect((await parts({ hand: null })).querySelector('.hand')).toBeNull();
  });

  it('is named by its state in words', async () => {
    expect((await parts({})).querySelector('svg')?.getAttribute('aria-label')).toBe('not begun; open to rain');
  });
});
