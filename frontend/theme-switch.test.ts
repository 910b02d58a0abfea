import { expect, it } from 'vitest';
import { shown } from './sample';
import './theme-switch';
import type { ThemeSwitch } from './theme-switch';

it('follows the system until a person chooses, and remembers the choice', async () => {
  expect(document.documentElement.style.colorScheme).toBe('light dark');
  const { root } = await shown<ThemeSwitch>('theme-switch', {});
  root.querySelector<HTMLElement>('[aria-label="Dark theme"]')?.click();
  expect(document.documentElement.style.colorScheme).toBe('dark');
  expect(localStorage.getItem('drylap-theme')).toBe('dark');
});
