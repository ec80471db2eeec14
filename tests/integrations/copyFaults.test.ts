// Each fault that a line, a host or a disk can do to a copy, and what the phone then has and says.
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, expect, it, vi } from 'vitest';
import { copyLine } from '../../src/copy/copyWords.ts';
import { copying } from '../../src/copy/worker/keepCopy.ts';
import { aPhone, aSite, nothing, type Phone, servesPacks } from '../support/aPhone.ts';

const site = aSite('one');
const { index } = site.copy;
const promise = 'Everything here works with no signal.';
const files = index.parts.map(({ file }) => file);
const html = '<!doctype html><title>Sign in</title><h1>Sign in first</h1>';

/** All that is kept is what the site has, and nothing else. */
async function expectOnlyTrue(phone: Phone, from = site): Promise<void> {
  for (const name of await phone.here.caches.keys()) {
    if (!name.endsWith(from.copy.index.edition)) continue;
    const cache = await phone.here.caches.open(name);
    for (const request of await cache.keys()) {
      const path = request.url.replace('https://site.test/dry/', '');
      if (path.startsWith('copy/mark/')) continue;
      const text = from.texts.get(path.replace(/(^|\/)$/, '$1index.html'));
      expect(await (await cache.match(request))?.text(), path).toBe(text);
    }
  }
}
async function expectWhole(phone: Phone, from = site): Promise<void> {
  for (const [file, text] of from.texts) {
    const path = file.replace(/(^|\/)index\.html$/, '$1');
    expect(await phone.page(from.copy.index, path), path).toBe(text);
  }
}

afterEach(() => {
  vi.useRealTimers();
});

it('a good line brings all of it in one visit, each pack once and the core first', async () => {
  let serves = servesPacks(site.copy);
  const phone = aPhone((path) => serves(path));
  const state = await phone.visit(index);
  serves = nothing;
  expect(state).toMatchObject({ is: 'whole', standing: 'whole', older: undefined, kept: state.of });
  expect(phone.asked.toSorted()).toEqual(files.toSorted());
  const stageOf = new Map(index.parts.map(({ file, stage }) => [file, stage]));
  expect(phone.asked.map((file) => stageOf.get(file))).toEqual(index.parts.map(({ stage }) => stage));
  await expectOnlyTrue(phone);
  await expectWhole(phone);
  expect(await phone.page(index, 'no/such/')).toContain('lost in one');
  expect(await phone.page(index, 'about')).toContain('about/ of one');
});

const half = (pack: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(pack.subarray(0, pack.length / 2));
const flipped = (pack: Uint8Array): Uint8Array<ArrayBuffer> => {
  const bytes = new Uint8Array(pack);
  bytes[bytes.length >> 1] = (bytes[bytes.length >> 1] ?? 0) ^ 1;
  return bytes;
};
/** What comes in place of a pack. */
const faults: Readonly<Record<string, (pack: Uint8Array) => Response>> = {
  'cut in the middle': (pack) =>
    new Response(
      new ReadableStream({
        start: (stream) => {
          stream.enqueue(half(pack));
          stream.error(new TypeError('network error'));
        },
      }),
    ),
  'ended too early': (pack) => new Response(half(pack)),
  'with a bit turned': (pack) => new Response(flipped(pack)),
  'longer than it is': (pack) => new Response(new Uint8Array([...pack, 0])),
  'answered with 500': () => new Response('Internal error', { status: 500 }),
  'answered with 404': () => new Response(html, { status: 404 }),
  'answered with a page': () => new Response(html, { headers: { 'content-type': 'text/html' } }),
  'led away to a page': () => Object.defineProperty(new Response(html, { headers: { 'content-type': 'text/html' } }), 'redirected', { value: true }),
  'with no answer': nothing,
};

it.each(Object.keys(faults))('every file once %s: fetched again in the same visit', async (fault) => {
  for (const bad of files) {
    let isBad = true;
    const phone = aPhone((path) => {
      const pack = site.copy.packs.get(path);
      if (path !== bad || !isBad || pack === undefined) return servesPacks(site.copy)(path);
      isBad = false;
      return faults[fault]?.(pack) ?? nothing();
    });
    expect((await phone.visit(index)).is, bad).toBe('whole');
    expect(phone.asked).toHaveLength(files.length + 1);
    await expectOnlyTrue(phone);
  }
});

it.each(Object.keys(faults))(
  'every file always %s: nothing wrong is kept or promised, and the next good visit fetches what is missing',
  async (fault) => {
    for (const bad of files) {
      let isBad = true;
      const phone = aPhone((path) => {
        const pack = site.copy.packs.get(path);
        return path === bad && isBad && pack !== undefined ? (faults[fault]?.(pack) ?? nothing()) : servesPacks(site.copy)(path);
      });
      const state = await phone.visit(index);
      expect(state.is, bad).toBe('stopped');
      expect(copyLine(state, 'phone')).not.toContain(promise);
      const isInCore = index.parts.some(({ file, stage }) => file === bad && stage !== 'rest');
      expect(state.standing, bad).toBe(isInCore ? 'begun' : 'core');
      await expectOnlyTrue(phone);
      isBad = false;
      const before = new Set(phone.asked.filter((file) => file !== bad));
      phone.asked.length = 0;
      expect((await phone.visit(index)).is).toBe('whole');
      expect(
        phone.asked.filter((file) => before.has(file)),
        'fetched twice',
      ).toEqual([]);
      await expectWhole(phone);
    }
  },
);

it('every file delayed: one that stops coming is given up after half a minute, one that only trickles is not', async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  for (const slow of files) {
    let isDead = true;
    const phone = aPhone((path, request) => {
      const pack = site.copy.packs.get(path);
      if (path !== slow || pack === undefined) return servesPacks(site.copy)(path);
      const pieces = [half(pack), new Uint8Array(pack.subarray(half(pack).length))];
      const isDying = isDead;
      isDead = false;
      return new Response(
        new ReadableStream({
          start: (stream) => {
            stream.enqueue(pieces[0]);
            request.signal.addEventListener('abort', () => stream.error(request.signal.reason));
            if (isDying) return;
            setTimeout(() => {
              stream.enqueue(pieces[1]);
              stream.close();
            }, 29_000);
          },
        }),
      );
    });
    const visit = phone.visit(index);
    // Hashes are worked out beside the clock, which moves only when all else has come.
    for (const [times, wait] of [[1, 31_000] as const, [2, 29_500] as const]) {
      const isAsked = (): boolean => phone.asked.filter((file) => file === slow).length === times;
      for (let before = -1; before < phone.told.length || !isAsked(); await pause(10)) before = phone.told.length;
      await vi.advanceTimersByTimeAsync(wait);
    }
    expect((await visit).is, slow).toBe('whole');
    expect(phone.asked.filter((file) => file === slow)).toHaveLength(2);
  }
});

it('the server gone after each tenth: it goes on from there, and fetches nothing twice', async () => {
  for (let tenth = 0; tenth <= 10; tenth += 1) {
    const many = Math.round((files.length * tenth) / 10);
    let left = many;
    const phone = aPhone((path) => {
      left -= 1;
      return left < 0 ? nothing() : servesPacks(site.copy)(path);
    });
    const state = await phone.visit(index);
    expect(state.is, `${tenth} tenths`).toBe(tenth === 10 ? 'whole' : 'stopped');
    expect(copyLine(state, 'phone').startsWith(promise)).toBe(tenth === 10);
    // What is here opens, and no page of which it is not certain.
    await expectOnlyTrue(phone);
    const had = phone.asked.slice(0, many);
    left = Number.POSITIVE_INFINITY;
    phone.asked.length = 0;
    expect((await phone.visit(index)).is).toBe('whole');
    expect(phone.asked.filter((file) => had.includes(file))).toEqual([]);
    expect(phone.asked).toHaveLength(files.length - many);
    await expectWhole(phone);
  }
});

it('a dead line is asked no more than a few times in a visit', async () => {
  const phone = aPhone(nothing);
  expect((await phone.visit(index)).is).toBe('stopped');
  expect(phone.asked.length).toBeLessThanOrEqual(6);
});

it('a full disk: says so, keeps the core that is there, and goes on when asked', async () => {
  const most = 1_000_000;
  const sparing = aPhone(servesPacks(site.copy), most);
  await sparing.visit(index, { savesData: true });
  const phone = aPhone(servesPacks(site.copy), most - sparing.disk.roomBytes + 20);
  const state = await phone.visit(index);
  expect(state).toMatchObject({ is: 'full', standing: 'core' });
  expect(copyLine(state, 'phone')).toBe('Guides, calculators and search work with no signal. There is no room for the rest.');
  expect(await phone.page(index, 'guides/a/')).toBe(site.texts.get('guides/a/index.html'));
  await expectOnlyTrue(phone);
  phone.disk.roomBytes = Number.POSITIVE_INFINITY;
  expect((await phone.visit(index, { isAsked: true })).is).toBe('whole');
});

it('a full disk under a newer edition leaves the earlier one whole and in use', async () => {
  const two = aSite('two');
  const phone = aPhone((path) => (site.copy.packs.has(path) ? servesPacks(site.copy)(path) : servesPacks(two.copy)(path)));
  await phone.visit(index);
  phone.disk.roomBytes = 600;
  const state = await phone.visit(two.copy.index);
  expect(state).toMatchObject({ is: 'full', older: 'whole' });
  expect(copyLine(state, 'phone')).toBe(`${promise} There is no room for a newer copy.`);
  await expectWhole({ ...phone, page: (_, path) => phone.page(two.copy.index, path) });
});

it('a full disk is not tried again and again while a page stays open', async () => {
  const phone = aPhone(servesPacks(site.copy), 500);
  const worker = copying(phone.here, index);
  const goOn = { kind: 'copy-go-on', savesData: false, isAsked: false } as const;
  await worker.goOn(goOn, 'a page');
  expect(phone.told.at(-1)?.is).toBe('full');
  const asked = phone.asked.length;
  await worker.goOn(goOn, 'a page');
  expect(phone.told.at(-1)?.is).toBe('full');
  expect(phone.asked).toHaveLength(asked);
  phone.disk.roomBytes = Number.POSITIVE_INFINITY;
  await worker.goOn({ ...goOn, isAsked: true }, 'a page');
  expect(phone.told.at(-1)?.is).toBe('whole');
});
