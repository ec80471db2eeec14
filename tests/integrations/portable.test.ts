import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { strFromU8, unzipSync } from 'fflate';
import { parse } from 'node-html-parser';
import { afterEach, describe, expect, it } from 'vitest';
import { isLeftOut, relative, relativeInSheet } from '../../src/integrations/portable/addresses.ts';
import { chunksFrom, inOrder, toChunk } from '../../src/integrations/portable/chunks.ts';
import { offerZip } from '../../src/integrations/portable/offerZip.ts';
import { toFolderPage } from '../../src/integrations/portable/pages.ts';
import { toldInFolder } from '../../src/integrations/portable/texts.ts';
import { writePortable } from '../../src/integrations/portable/writePortable.ts';

const edition = { day: 'Nov 29, 2026', version: '1.2.3' };

describe('an address from the root of the site', () => {
  it.each([
    ['/', 'index.html', 'index.html'],
    ['/guides/x/', 'index.html', 'guides/x/index.html'],
    ['/guides/x/?a=1&b=/c/#d', 'calculators/y/index.html', '../../guides/x/index.html?a=1&b=/c/#d'],
    ['/place/#/gate', 'search/index.html', '../place/index.html#/gate'],
    ['/_astro/a.css', 'guides/x/index.html', '../../_astro/a.css'],
    ['#part', 'guides/x/index.html', '#part'],
    ['https://elsewhere.test/', 'index.html', 'https://elsewhere.test/'],
    ['//elsewhere.test/', 'index.html', '//elsewhere.test/'],
    ['mailto:a@b.test', 'index.html', 'mailto:a@b.test'],
  ])('%s in %s is %s', (address, file, is) => expect(relative(address, file, '/')).toBe(is));

  it('is told from the folder of the server that the site was built for', () => {
    expect(relative('/dry/guides/x/?a=1#b', 'sheets/index.html', '/dry/')).toBe('../guides/x/index.html?a=1#b');
    expect(relative('/dry/', 'index.html', '/dry/')).toBe('index.html');
  });

  it('is found in a sheet of style, in any quotes', () => {
    const css = 'a{background:url(/_astro/a.woff2)}b{background:url("/b.svg")}c{background:url(data:x)}';
    expect(relativeInSheet(css, '_astro/x.css', '/')).toBe(
      'a{background:url(../_astro/a.woff2)}b{background:url("../b.svg")}c{background:url(data:x)}',
    );
  });

  it('of what only a server has a use for stays behind', () => {
    for (const file of ['404.html', 'worker.js', 'site.webmanifest', 'copy/packs/a.json', 'handbook/book.epub', 'pictures/home.webp'])
      expect(isLeftOut(file), file).toBe(true);
    for (const file of ['index.html', 'guides/copying/index.html', '_astro/worker.js']) expect(isLeftOut(file), file).toBe(false);
  });
});

describe('a module', () => {
  it('names what it imports and what it fetches, as files of the folder', async () => {
    const chunk = await toChunk('_astro/a.js', 'import{t as e}from"./b.js";const n=()=>import(`./c.js`);e(n);export{n as t};', '/');
    expect(chunk.imports).toEqual(['_astro/b.js']);
    expect(chunk.fetched).toEqual(['_astro/c.js']);
    expect(chunk.code).not.toMatch(/\bimport\b|\bexport\b/);
  });
  it.each(['"', "'", '`'])('leads from its drawn steps to files, seen from a page two folders deep, in quotes %s', async (quote) => {
    const { code } = await toChunk('_astro/a.js', `export default ["a",{href:${quote}/dry/sources/m/#x${quote}},"x"]`, '/dry/');
    expect(code).toContain('../../sources/m/index.html#x');
    expect(code).not.toMatch(/["'`]\/(?:dry|sources)/);
  });
  it('that imports in a way that nobody knows stops the build', async () => {
    await expect(toChunk('_astro/a.js', 'export const load=(name)=>import(name)', '/')).rejects.toThrow('_astro/a.js: an import that');
  });
  it('comes after all that must be there before it, also in a ring', () => {
    const chunks = new Map(Object.entries({ a: { imports: ['b', 'c'] }, b: { imports: ['c'] }, c: { imports: ['a'] } }));
    expect(inOrder('a', chunks)).toEqual(['c', 'b', 'a']);
  });
});

/** A page with as much of a browser as the folder's loader asks for: scripts are run from the files that are given. */
function browserWith(files: Readonly<Record<string, string>>, search = '') {
  const heard = new Map<string, (event: object) => void>();
  const stored = new Map<string, string>();
  const document = {
    currentScript: { src: 'file:///disk/folder/folder.js', dataset: {} } as { src?: string; dataset: Record<string, string> } | null,
    documentElement: { dataset: {} as Record<string, string> },
    createElement: (): object => ({ remove() {} }),
    head: {
      append(script: { src: string; onload: () => void; onerror: () => void }) {
        const code = files[script.src.replace('file:///disk/folder/', '')];
        if (code === undefined) return void setTimeout(script.onerror);
        runInNewContext(code, context);
        setTimeout(script.onload);
      },
    },
  };
  const context: Record<string, unknown> = {
    ...{ document, URL, setTimeout, crypto, Element: class {}, console },
    addEventListener: (kind: string, listener: (event: object) => void) => heard.set(kind, listener),
    location: { search, pathname: '/disk/folder/index.html', href: `file:///disk/folder/index.html${search}` },
    history: { state: null, replaceState: () => undefined },
    localStorage: { getItem: (key: string) => stored.get(key) ?? null, setItem: (key: string, text: string) => void stored.set(key, text) },
  };
  context['globalThis'] = context;
  const run = (code: string, isEntry = false) => {
    document.currentScript = { dataset: isEntry ? { run: '' } : {} };
    runInNewContext(code, context);
  };
  const start = (runtime: string) => runInNewContext(runtime, context);
  return { context, run, start, document, stored, heard };
}
const runtime = readFileSync(new URL('../../src/integrations/portable/runtime.js', import.meta.url), 'utf8');

describe('the folder’s loader', () => {
  const modules: Readonly<Record<string, string>> = {
    '_astro/entry.js': 'import{count}from"./shared.js";globalThis.seen=[count];globalThis.later=()=>import("./lazy.js");',
    '_astro/shared.js': 'import{of}from"./ring.js";export let count=1;export const add=()=>{count+=1;return of()};',
    '_astro/ring.js': 'import{count}from"./shared.js";export const of=()=>count;',
    '_astro/lazy.js': 'import{add,count}from"./shared.js";export const got=[add(),count];export default"whole";',
  };
  it('runs a page’s script with all that it imports, and fetches the rest when it is asked', async () => {
    const chunks = await chunksFrom(['_astro/entry.js'], (file) => modules[file] ?? '', '/');
    expect([...chunks.keys()]).toEqual(['_astro/entry.js', '_astro/lazy.js', '_astro/ring.js', '_astro/shared.js']);
    const files = Object.fromEntries([...chunks].map(([file, { code }]) => [file, code]));
    const { context, run, start } = browserWith(files);
    const imports = Object.fromEntries([...chunks].map(([file, chunk]) => [file, chunk.imports]));
    start(runtime.replace('IMPORTS', JSON.stringify(imports)));
    for (const file of inOrder('_astro/entry.js', chunks)) run(files[file] ?? '', file === '_astro/entry.js');
    expect(context['seen']).toEqual([1]);
    const later = context['later'] as () => Promise<{ got: readonly number[]; default: string }>;
    const lazy = await later();
    // One `shared` for all, whose binding lives: what `add` did is seen through both names.
    expect([...lazy.got]).toEqual([2, 2]);
    expect(lazy.default).toBe('whole');
  });
  it('says so where a file is missing, and tries again at the next asking', async () => {
    const files: Record<string, string> = {};
    const { context, start } = browserWith(files);
    start(runtime.replace('IMPORTS', '{}'));
    const { read } = context['holdwaterFolder'] as { read: (file: string) => Promise<unknown> };
    await expect(read('search/index.json')).rejects.toThrow('search/index.json.js could not be had');
    files['search/index.json.js'] = 'holdwaterFolder.give("search/index.json",{"a":"<b>"});';
    await expect(read('search/index.json')).resolves.toEqual({ a: '<b>' });
  });
});

describe('what was chosen', () => {
  const chosen = { 'holdwater-units': 'si', 'holdwater-by': 'Ann + Lee' };
  /** Sends the search from a page on which it was chosen, and opens the page to which it leads in a browser that parts them. */
  function searched(action: string) {
    const from = browserWith({});
    for (const [key, text] of Object.entries(chosen)) from.stored.set(key, text);
    from.start(runtime.replace('IMPORTS', '{}'));
    const sent = new URLSearchParams({ q: 'hay' });
    const form = { action, hasAttribute: () => true, append: ({ name, value }: { name: string; value: string }) => sent.append(name, value) };
    from.heard.get('submit')?.({ target: form });
    const to = browserWith({}, `?${sent}`);
    to.start(runtime.replace('IMPORTS', '{}'));
    return { sent, to };
  }
  it('goes along with a search from one page of the folder to another', () => {
    const { to } = searched('file:///disk/folder/search/index.html');
    expect(Object.fromEntries(to.stored)).toMatchObject({ ...chosen, 'holdwater-keeps': 'by-page' });
  });
  it.each(['file:///disk/other/index.html', 'https://elsewhere.test/index.html', 'file:///disk/folder/index.html'])(
    'stays here where a form goes to %s',
    (action) => {
      expect([...searched(action).sent.keys()]).toEqual(['q']);
    },
  );
});

describe('a page', () => {
  const built = `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><link rel="stylesheet" href="/_astro/base.css"><link rel="preload" href="/f.woff2" as="font"><link rel="modulepreload" fetchpriority="low" href="/_astro/s.js"><link rel="manifest" href="/site.webmanifest"><link id="holdwater" rel="stylesheet" href="/office.css"><script src="/office.js"></script><meta http-equiv="content-security-policy" content="default-src 'self'"></head><body><section data-page="/calculators/a/" data-styles="/_astro/a.css /_astro/b.css"></section><footer class="bottom"><span data-hosted="foot">After the first visit</span></footer><script type="module" src="/_astro/a.js"></script><script type="module" src="/_astro/b.js"></script></body></html>`;
  const chunks = new Map(
    Object.entries({ '_astro/a.js': ['_astro/s.js'], '_astro/b.js': ['_astro/s.js'], '_astro/s.js': [] }).map(([file, imports]) => [
      file,
      { code: '', imports, fetched: [] },
    ]),
  );
  const html = toFolderPage(parse(built), 'guides/x/index.html', { base: '/', chunks, edition, published: 'https://copy.test/' });
  it('loads classic scripts, each once, those imported first', () => {
    const scripts = [...html.matchAll(/<script([^>]*)>/g)].map((found) => found[1]?.trim());
    expect(scripts).toEqual([
      'src="../../folder.js"',
      'src="../../office.js"',
      'defer src="../../_astro/s.js"',
      'defer src="../../_astro/a.js" data-run',
      'defer src="../../_astro/b.js" data-run',
    ]);
  });
  it('holds no address from the root, no preload and no manifest', () => {
    expect(html).not.toMatch(/(?:href|src|data-page|data-styles)="\//);
    expect(html).not.toMatch(/preload|manifest/);
    expect(html).toContain('data-styles="../../_astro/a.css ../../_astro/b.css"');
    expect(html).toContain('data-page="../../calculators/a/index.html"');
    expect(html).toContain('data-copy-at="https://copy.test/"');
  });
  it('has its policy before any script, and nothing to connect to', () => {
    expect(html.indexOf('content-security-policy')).toBeLessThan(html.indexOf('<script'));
    expect(html.match(/content-security-policy/g)).toHaveLength(1);
    expect(html).toContain("default-src 'none'");
    expect(html).not.toContain('connect-src');
  });
  it('says of which day and version it is, and nothing of a first visit', () => {
    expect(html).toContain('This is a copy in a folder, of Nov 29, 2026, version 1.2.3.');
    expect(html).not.toContain('After the first visit');
  });
  it('with a mark that has no words stops the build', () => {
    expect(() => toldInFolder('no-such-mark', edition)).toThrow('data-hosted="no-such-mark"');
  });
});

describe('the folder and its zip', () => {
  const made: string[] = [];
  afterEach(() => {
    for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
  });
  const builtSite = (): string => {
    const folder = mkdtempSync(join(tmpdir(), 'portable-'));
    made.push(folder);
    const files = {
      'index.html':
        '<html><head><meta charset="utf-8"><link rel="stylesheet" href="/_astro/a.css"></head><body><a href="/guides/x/">x</a><script type="module" src="/_astro/a.js"></script></body></html>',
      'guides/x/index.html':
        '<html><head><meta charset="utf-8"></head><body><a href="/">home</a><noscript><a href="/guides/x/">x</a></noscript></body></html>',
      '404.html': '<html></html>',
      'worker.js': 'self',
      'office.css': ':root { --holdwater-office: {} }',
      '_astro/a.css': 'a{}',
      '_astro/a.js': 'const a=1;export{a};',
      '_astro/onlyWorker.js': 'self',
      'search/index.json': '{"lines":["<"]}',
      'local/fields.json': '{}',
      'place/schema-1.json': '{}',
    };
    for (const [file, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, 'dist', file)), { recursive: true });
      writeFileSync(join(folder, 'dist', file), text);
    }
    return folder;
  };
  const options = { base: '/', day: '2026-11-29', version: '1.2.3', published: undefined };
  it('hold what a disk needs and leave out what only a server has a use for', async () => {
    const folder = builtSite();
    const made = await writePortable(join(folder, 'dist'), join(folder, 'portable'), options);
    const zip = unzipSync(made.zip);
    expect(Object.keys(zip)).toEqual(
      [
        'README.txt',
        '_astro/a.css',
        '_astro/a.js',
        'folder.css',
        'folder.js',
        'guides/x/index.html',
        'index.html',
        'local/fields.json.js',
        'office.css',
        'place/schema-1.json',
        'search/index.json.js',
        'start-on-linux.sh',
        'start-on-macos.command',
        'start-on-windows.bat',
      ].map((file) => `holdwater/${file}`),
    );
    expect(strFromU8(zip['holdwater/guides/x/index.html'] ?? new Uint8Array())).toContain('<noscript><a href="../../guides/x/index.html">');
    const readme = strFromU8(zip['holdwater/README.txt'] ?? new Uint8Array());
    expect(readme).toMatch(/Version 1\.2\.3, of Nov 29, 2026\r\n/);
    // The zip has an empty one, and every page links it: a missing file would be told as a fault of the page.
    expect(readme.replace(/\s+/g, ' ')).toContain('Before you extract it over an older one, copy your office.css to another place.');
    expect(readme.indexOf('Extract this zip first')).toBeLessThan(readme.indexOf('index.html'));
  });
  it('are the same bytes again', async () => {
    const [one, other] = await Promise.all(
      [builtSite(), builtSite()].map((folder) => writePortable(join(folder, 'dist'), join(folder, 'portable'), options)),
    );
    expect(one?.zip.length).toBeGreaterThan(1000);
    expect(one?.zip).toEqual(other?.zip);
  });
  it('are offered with the size and the checksum of the zip; a page without a place for them stops the build', () => {
    const dist = join(builtSite(), 'dist');
    const zip = new TextEncoder().encode('abc');
    expect(() => offerZip(dist, zip)).toThrow();
    mkdirSync(join(dist, 'from-a-folder'));
    const page = join(dist, 'from-a-folder/index.html');
    writeFileSync(page, '<p>(ZIP_SIZE)</p>');
    expect(() => offerZip(dist, zip)).toThrow('has no ZIP_CHECKSUM');
    writeFileSync(page, '<p>(ZIP_SIZE) ZIP_CHECKSUM</p>');
    offerZip(dist, zip);
    // The checksum of "abc" is the example of the standard (NIST, FIPS 180-2, appendix B.1).
    expect(readFileSync(page, 'utf8')).toBe('<p>(0.0 MB) ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad</p>');
    expect(readFileSync(join(dist, 'portable.zip'), 'utf8')).toBe('abc');
  });
});
