import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { afterBuild } from './src/integrations/afterBuild.ts';
import { baseLinks } from './src/integrations/baseLinks.ts';
import { longExamples, workings } from './src/integrations/chunkEach.ts';
import { namesAhead } from './src/integrations/fetchAhead.ts';
import { markTerms } from './src/integrations/markTerms.ts';
import { namesShipped } from './src/integrations/shipped.ts';
import { engineAtOnce, fewChunks, katexStyles, leanDefinitions, noModulePreload, noPreloadHelper } from './src/integrations/vitePlugins.ts';
import { wideTables } from './src/integrations/wideTables.ts';
import { workedOut } from './src/integrations/workedOut.ts';

// HOLDWATER_BASE: the folder under which a copy is served. HOLDWATER_OUT: where the built site goes.
const base = process.env['HOLDWATER_BASE'] ?? '/';
const shipped = namesShipped();
const ahead = namesAhead();

export default defineConfig({
  site: process.env['HOLDWATER_SITE'] ?? 'https://holdwater.example',
  base,
  outDir: process.env['HOLDWATER_OUT'] ?? 'dist',
  output: 'static',
  trailingSlash: 'always',
  // The default drops the space before a link that begins a line.
  compressHTML: true,
  // Scoping a style adds no weight to its selectors.
  scopedStyleStrategy: 'where',
  build: { format: 'directory', inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  markdown: {
    // Astro's default processor runs no remark or rehype plugins, and formulas need them.
    processor: unified({
      remarkPlugins: [remarkMath],
      rehypePlugins: [
        [rehypeKatex, { strict: 'error', throwOnError: true }],
        [markTerms, { guides: './content/guides' }],
        [baseLinks, { base }],
        wideTables,
      ],
    }),
  },
  // `assetsInlineLimit`: a font inlined as data: would be blocked by `font-src 'self'`.
  vite: {
    build: { assetsInlineLimit: 0 },
    plugins: [
      katexStyles,
      workedOut,
      leanDefinitions,
      noModulePreload,
      noPreloadHelper,
      fewChunks,
      workings(base),
      longExamples(),
      shipped.plugin,
      ahead.plugin,
    ],
    // `npm run dev` looks through scripts with a reader of its own, which takes JSX for another library's.
    optimizeDeps: { rolldownOptions: { transform: { jsx: { runtime: 'automatic', importSource: 'preact' } } } },
    worker: { plugins: () => [engineAtOnce, leanDefinitions, shipped.forWorkers] },
  },
  integrations: [mdx(), preact(), afterBuild({ shipped, ahead })],
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "connect-src 'self'",
        "worker-src 'self'",
        "manifest-src 'self'",
        "img-src 'self' data:",
        "font-src 'self'",
        "object-src 'none'",
        "base-uri 'self'",
        "form-action 'self'",
        // No text is read as HTML or as a script's address: pages build elements, and one policy lets workers of this origin through.
        "require-trusted-types-for 'script'",
        'trusted-types own-script',
      ],
      scriptDirective: { resources: ["'self'"] },
      // Formulas are laid out with style attributes.
      styleDirective: { resources: ["'self'", { resource: "'unsafe-inline'", kind: 'attribute' }] },
    },
  },
});
