import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { serviceWorker } from './scripts/service-worker-plugin.mjs';

// One style sheet for all pages; nothing is inlined as data:, since the content security policy allows 'self' only.
export default defineConfig({
  root: 'src/web',
  plugins: [react(), serviceWorker()],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    cssCodeSplit: false,
    assetsInlineLimit: 0,
    target: 'es2022',
    modulePreload: { polyfill: false },
    // The largest is the check with its published tables, fetched once somebody types a recipe.
    chunkSizeWarningLimit: 700,
  },
});
