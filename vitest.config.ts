import { readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  define: { THEME_CSS: JSON.stringify(readFileSync('frontend/theme.css', 'utf8')) },
  test: { environment: 'happy-dom', include: ['frontend/*.test.ts'], pool: 'threads', maxWorkers: 1, isolate: false },
});
