import path from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** How the screens are built: one page, no inlined assets, so that the content policy can stay strict. */
export default defineConfig({
  root: path.join(import.meta.dirname, 'renderer'),
  base: '/',
  plugins: [react()],
  build: {
    outDir: path.join(import.meta.dirname, 'dist', 'renderer'),
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    target: 'chrome130',
    chunkSizeWarningLimit: 2000,
  },
});
