import { describe, expect, it } from 'vitest';
import { ForecastStrip, readingAt } from './forecast-strip';
import { shown, strip } from './sample';

describe('a forecast strip', () => {
  it('reads an hour in words', () => {
    expect(readingAt(strip(), 555)).toBe('Mon 13 Apr 09:15: rain 1.2 mm at 60 %; open for clad; shut for install');
  });

  it('tells rain that does not count from rain that does', () => {
    expect(readingAt(strip(), 610)).toContain('too little to count as rain');
  });

  it('says nothing of rain beyond the forecast', () => {
    expect(readingAt(strip(), 1500)).toBe('Tue 14 Apr 01:00: beyond the forecast; shut for install, clad');
  });

  it('treats an open stretch as half-open', () => {
    expect(readingAt(strip(), 510)).toContain('shut for install');
    expect(readingAt(strip(), 509)).toContain('open for install');
  });

  it('moves its reading an hour by the arrow keys, and no further than its ends', async () => {
    const { element, root } = await shown<ForecastStrip>('forecast-strip', { strip: strip() });
    const track = root.querySelector('.track') as HTMLElement;
    for (const key of ['ArrowLeft', 'ArrowRight', 'PageDown', 'PageDown', 'PageDown']) {
      track.dispatchEvent(new KeyboardEvent('keydown', { key }));
    }
    await element.updateComplete;
    expect(track.getAttribute('aria-valuetext')).toContain('Tue 14 Apr 23:00');
  });

  it('lists the open hours for those who do not see them', async () => {
    const { root } = await shown<ForecastStrip>('forecast-strip', { strip: strip() });
    const words = root.querySelector('.unseen')?.textContent;
    expect(words).toContain('Install is open: Mon 13 Apr 07:00 to 08:30');
    expect(words).toContain('Clad is open: at no hour');
  });
});
