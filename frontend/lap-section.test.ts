import { expect, it } from 'vitest';
import { LapSection } from './lap-section';
import { shown } from './sample';

const drawing = '<svg viewBox="0 0 10 10"><path class="water-path" d="M0 0L9 9"/></svg>';

it('embeds the drawing and lets the water run until a person holds it', async () => {
  const { element, root } = await shown<LapSection>('lap-section', { wide: drawing, caption: 'Water ends outside.' });
  expect(root.querySelector('.drawing.running .water-path')).not.toBeNull();
  root.querySelector('button')?.click();
  await element.updateComplete;
  expect(root.querySelector('.drawing.running')).toBeNull();
  expect(root.querySelector('.water-path')).not.toBeNull();
});

it('stands still for those who asked for less motion', () => {
  const styles = LapSection.styles.map(String).join('');
  expect(styles).toMatch(/prefers-reduced-motion: reduce\)\s*{\s*\.running \.water-path\s*{\s*animation: none/);
});

it('takes the tall drawing where the wide one cannot be read', async () => {
  const { element, root } = await shown<LapSection>('lap-section', {
    wide: '<svg id="wide"/>',
    tall: '<svg id="tall"/>',
  });
  expect(root.querySelector('#wide')).not.toBeNull();
  Object.assign(element, { width: 340 });
  await element.updateComplete;
  expect(root.querySelector('#tall')).not.toBeNull();
  expect(root.querySelector('#wide')).toBeNull();
});
