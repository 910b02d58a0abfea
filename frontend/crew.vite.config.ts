import { defineConfig } from 'vite';

/** The page of the steps by itself, under names that never change, so that a service worker can keep it on a phone. */
export default defineConfig({
  publicDir: false,
  base: '/crew/',
  build: {
    outDir: '../target/classes/META-INF/resources/crew',
    emptyOutDir: false,
    target: 'es2022',
    cssCodeSplit: false,
    rollupOptions: {
      input: 'frontend/steps-page.ts',
      output: {
        entryFileNames: 'steps.js',
        assetFileNames: (asset) => (asset.names[0]?.endsWith('.css') ? 'steps.css' : '[name][extname]'),
      },
    },
  },
  root: import.meta.dirname,
});
