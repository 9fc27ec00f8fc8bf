import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The page of the window. It is served from its own protocol on the desktop and from the loopback server in a browser: paths are relative. */
export default defineConfig({
  root: 'renderer',
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: '../.build/window',
    emptyOutDir: true,
    target: 'es2023',
    // Nothing is inlined as data: the page's content policy lets scripts, styles and fonts come from files alone.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 4000,
  },
});
