import { render } from 'lit';
import { describe, expect, it } from 'vitest';
import { roughLine } from './rough-line';
import { english } from './speech';
import type { OpeningNow, RoughNow } from './step-records';

function shown(rough: RoughNow | undefined): HTMLElement {
  const place = document.createElement('div');
  render(roughLine(english, { folder: 7, opening: 'W 1/2' } as OpeningNow, rough), place);
  return place;
}

describe('the line of the rough opening', () => {
  it('says what was found, what to do and who measured', () => {
    const place = shown({ mayMeasure: true, grade: 'report', words: 'does not fit', meaning: 'Report it.', by: 'Ada' });
    expect(place.textContent?.replace(/\s+/g, ' ')).toContain(
      'Rough opening: does not fit. Report it. Measured by Ada.',
    );
    expect(place.querySelector('.rough')?.classList.contains('report')).toBe(true);
  });
  it('leads to the form, the name of the opening escaped', () => {
    const link = shown({ mayMeasure: true }).querySelector('a');
    expect(link?.getAttribute('href')).toBe('/rough-opening?folder=7&opening=W%201%2F2');
    expect(link?.textContent).toBe('Measure it');
  });
  it('says nothing to who may not measure where nothing was measured, nor before the server was asked', () => {
    expect(shown({ mayMeasure: false }).textContent?.trim()).toBe('');
    expect(shown(undefined).textContent?.trim()).toBe('');
  });
});
