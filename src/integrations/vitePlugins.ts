import type { Plugin } from 'vite';

/** Every browser that runs this site reads WOFF2; the other formats would only swell the offline copy. */
export const katexWoff2Only: Plugin = {
  name: 'katex-woff2-only',
  enforce: 'pre',
  transform: (code, id) =>
    id.includes('katex.min.css')
      ? code.replace(/,url\([^)]*\.(?:woff|ttf)\) format\("[a-z]+"\)/g, '').replaceAll('font-display:block', 'font-display:swap')
      : undefined,
};

/** Vite's preload wrapper breaks lazy chunks when pages are opened straight from a disk. Astro overrides the plain option, hence a plugin. */
export const noModulePreload: Plugin = {
  name: 'no-module-preload',
  enforce: 'post',
  configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
};
