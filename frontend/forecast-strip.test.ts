import { describe, expect, it } from 'vitest';
import './forecast-strip';
import type { ForecastStrip } from './forecast-strip';
import { readingAt } from './forecast-strip.words';
import { shown, strip } from './sample';

describe('a forecast strip', () => {
  it('reads an hour in words', () => {
    expect(readingAt(strip(), 555)).toBe(
      'Mon 13 Apr 09:15: rain 1.2 mm at 60 %; on the wall 0.30 l/m², which wets it; ' +
        'gust 12 m/s, too much for the install; 9 °C; open for clad; shut for install',
    );
  });

  it('tells rain that does not count from rain that does', () => {
    expect(readingAt(strip(), 610)).toContain('too little to count as rain');
  });

  it('says nothing of rain beyond the forecast', () => {
    expect(readingAt(strip(), 1500)).toBe(
      'Tue 14 Apr 01:00: beyond the forecast: climate only; shut for install, clad',
    );
  });

  it('says nothing of hours before the first that is told', () => {
    expect(readingAt(strip(), 420)).toBe('Mon 13 Apr 07:00: not told; open for install, clad');
  });

  it('tells an hour that is too cold', () => {
    expect(readingAt(strip(), 540 + 14 * 60)).toContain('2 °C, too cold for the install');
  });

  it('draws what counts apart from what does not, and where it begins to count', async () => {
    const { root } = await shown<ForecastStrip>('forecast-strip', { strip: strip() });
    const path = (row: string, kind: string) => root.querySelector(`.row.${row} .${kind}`)?.getAttribute('d') ?? '';
    expect(path('rain', 'full')).toMatch(/^M540 100v-54\.8h60V100Z$/);
    expect(path('rain', 'pale')).toMatch(/^M600 100v-15\.8h60V100Z$/);
    expect(path('wall', 'full')).toContain('M540 ');
    expect(path('gust', 'full')).toMatch(/^M540 100v-49\.6h60V100Z$/);
    expect(path('cold', 'full')).toContain('M1380 ');
    expect(root.querySelectorAll('.limit')).toHaveLength(3);
  });

  it('holds a table of its hours once that is opened', async () => {
    const { element, root } = await shown<ForecastStrip>('forecast-strip', { strip: strip() });
    expect(root.querySelector('table')).toBeNull();
    const details = root.querySelector('details') as HTMLDetailsElement;
    details.open = true;
    details.dispatchEvent(new Event('toggle'));
    await element.updateComplete;
    const rows = [...root.querySelectorAll('tbody tr')].map((row) =>
      [...row.children].map((cell) => cell.textContent.trim()).join('|'),
    );
    expect(rows).toHaveLength(48);
    expect(rows[9]).toBe('Mon 13 Apr 09:00|1.2 counts|60|0.30 wets it|12.4|9.0|light|clad');
    expect(rows[3]).toBe('Mon 13 Apr 03:00|not told|||||dark|nothing');
    expect(rows[24]).toBe('Tue 14 Apr 00:00|beyond the forecast: climate only|||||light|nothing');
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
