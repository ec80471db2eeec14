// Which edition opens, which goes, and what a reader who saves data is spared.
import { expect, it } from 'vitest';
import { copyLine } from '../../src/copy/copyWords.ts';
import type { Copy } from '../../src/integrations/copy/copyOf.ts';
import { aPhone, aSite, nothing, type Phone, servesPacks } from '../support/aPhone.ts';

const one = aSite('one');
const two = aSite('two');
const three = aSite('three');
const four = aSite('four');
const pages = ['', 'about/', 'guides/a/', 'calculators/b/', 'sources/', 'checks/'];

/** A phone and the copy that the server has now, of which it may serve only so many packs. */
function standing(): { readonly phone: Phone; readonly deploy: (copy: Copy, packs?: number) => void } {
  let served = one.copy;
  let left = Number.POSITIVE_INFINITY;
  const phone = aPhone((path) => {
    if (!path.startsWith('copy/')) return nothing();
    left -= 1;
    return left < 0 ? nothing() : servesPacks(served)(path);
  });
  return {
    phone,
    deploy: (copy, packs = Number.POSITIVE_INFINITY) => {
      served = copy;
      left = packs;
    },
  };
}
/** Every page opens, with its parts, and all are of this edition. */
async function expectEdition(phone: Phone, worker: Copy, edition: string): Promise<void> {
  for (const path of pages) {
    expect(await phone.page(worker.index, path, path), path).toBe(`<p>${path} of ${edition}</p>`);
    expect(await phone.part(worker.index, 'office.js', path)).toBe(`office of ${edition}`);
  }
}
const nameOf = (copy: Copy): string => copy.index.edition;

it('a newer edition opens only when all of it is here, and then the earlier one goes', async () => {
  const { phone, deploy } = standing();
  await phone.visit(one.copy.index);
  for (let packs = 0; packs < two.copy.packs.size; packs += 1) {
    deploy(two.copy, packs === 0 ? 0 : 1);
    const state = await phone.visit(two.copy.index);
    if (state.is === 'whole') break;
    expect(state.older).toBe('whole');
    expect(copyLine(state, 'phone')).toBe('Everything here works with no signal. A newer copy comes when the signal is better.');
    await expectEdition(phone, two.copy, 'one');
  }
  deploy(two.copy);
  await phone.visit(two.copy.index);
  await expectEdition(phone, two.copy, 'two');
  expect(await phone.editions()).toEqual([nameOf(two.copy)]);
});

it('three editions in a row, the second half kept: the first opens until the third is whole, and then it and the half go', async () => {
  const { phone, deploy } = standing();
  await phone.visit(one.copy.index);
  deploy(two.copy, Math.ceil(two.copy.packs.size / 2));
  expect((await phone.visit(two.copy.index)).is).toBe('stopped');
  await expectEdition(phone, two.copy, 'one');
  deploy(three.copy, 3);
  expect((await phone.visit(three.copy.index)).is).toBe('stopped');
  await expectEdition(phone, three.copy, 'one');
  expect(await phone.editions()).toEqual([nameOf(one.copy), nameOf(two.copy), nameOf(three.copy)]);
  deploy(three.copy);
  expect((await phone.visit(three.copy.index)).is).toBe('whole');
  await expectEdition(phone, three.copy, 'three');
  expect(await phone.editions()).toEqual([nameOf(three.copy)]);
});

it('with no edition whole, the newest whose core is here opens, and nothing of another', async () => {
  const { phone, deploy } = standing();
  const core = one.copy.index.parts.filter(({ stage }) => stage !== 'rest').length;
  deploy(one.copy, core);
  expect(await phone.visit(one.copy.index)).toMatchObject({ is: 'stopped', standing: 'core' });
  deploy(two.copy, core - 2);
  const begun = await phone.visit(two.copy.index);
  expect(begun).toMatchObject({ standing: 'begun', older: 'core' });
  expect(copyLine(begun, 'phone')).toBe('Guides, calculators and search work with no signal. A newer copy comes when the signal is better.');
  expect(await phone.page(two.copy.index, 'guides/a/')).toContain('of one');
  deploy(two.copy, 2);
  expect(await phone.visit(two.copy.index)).toMatchObject({ standing: 'core', older: undefined });
  for (const path of ['', 'about/', 'guides/a/', 'calculators/b/']) expect(await phone.page(two.copy.index, path), path).toContain('of two');
  // That there is no such page, only a whole copy can tell.
  for (const path of ['sources/', 'no/such/']) expect(await phone.page(two.copy.index, path), path).toBe('<p>no-signal/ of two</p>');
});

it('half a deployment, the worker before its packs or the packs before their worker: what was whole stays in use', async () => {
  const { phone, deploy } = standing();
  await phone.visit(one.copy.index);
  deploy(one.copy);
  expect(await phone.visit(two.copy.index)).toMatchObject({ is: 'stopped', older: 'whole' });
  await expectEdition(phone, two.copy, 'one');
  deploy(two.copy);
  expect((await phone.visit(two.copy.index)).is).toBe('whole');
  await expectEdition(phone, two.copy, 'two');

  const early = standing();
  early.deploy(two.copy);
  expect((await early.phone.visit(one.copy.index)).is).toBe('stopped');
  expect(copyLine(early.phone.told.at(-1) ?? never(), 'phone')).not.toContain('Everything');
});
const never = (): never => {
  throw new Error('nothing was told');
};

it('a page that is open keeps the parts of its edition when a newer one comes, for as long as it is open', async () => {
  const { phone, deploy } = standing();
  await phone.visit(one.copy.index);
  await phone.page(one.copy.index, 'guides/a/', 'old page');
  phone.open.add('old page');
  deploy(two.copy);
  expect((await phone.visit(two.copy.index)).is).toBe('whole');
  await phone.page(two.copy.index, 'guides/a/', 'new page');
  for (const [client, edition] of [
    ['old page', 'one'],
    ['new page', 'two'],
  ] as const) {
    expect(await phone.part(two.copy.index, 'office.js', client)).toBe(`office of ${edition}`);
    expect(await phone.part(two.copy.index, 'search/index.json', client)).toContain(edition);
  }
  expect(await phone.editions()).toEqual([nameOf(one.copy), nameOf(two.copy)]);
  phone.open.clear();
  await phone.visit(two.copy.index);
  expect(await phone.editions()).toEqual([nameOf(two.copy)]);
  // A script whose name tells its content is the same in any edition.
  expect(await phone.part(two.copy.index, '_astro/looks.AAAAAAAA.css', 'new page')).toBe('a{}');
});

it('a page of the first visit, from before its worker or from the server, keeps what it is made of when a newer edition comes and the host has only that', async () => {
  let served = one;
  let isCoreHere = false;
  const phone = aPhone((path) => {
    if (path.startsWith('copy/guides-2') && !isCoreHere) return nothing();
    if (path.startsWith('copy/')) return servesPacks(served.copy)(path);
    const text = served.texts.get(path.replace(/\/$/, '/index.html'));
    return text === undefined ? new Response('gone', { status: 404 }) : new Response(text);
  });
  for (const client of ['first page', 'second page']) phone.open.add(client);
  await phone.visit(one.copy.index, {}, 'first page');
  await phone.page(one.copy.index, 'guides/a/', 'second page');
  isCoreHere = true;
  await phone.visit(one.copy.index, {}, 'first page');
  served = two;
  expect((await phone.visit(two.copy.index, {}, 'first page')).is).toBe('whole');
  for (const client of phone.open) expect(await phone.part(two.copy.index, '_astro/form.onexxxxx.js', client), client).toBe('form of one');
  expect(await phone.part(two.copy.index, 'search/index.json', 'first page')).toContain('one');
  phone.open.clear();
  await phone.visit(two.copy.index);
  expect(await phone.editions()).toEqual([nameOf(two.copy)]);
});

it('a page from the server takes its parts from there, but for those whose name tells their content', async () => {
  const phone = aPhone((path) => (path.startsWith('copy/') ? servesPacks(one.copy)(path) : new Response(`${path} from the server`)));
  await phone.visit(one.copy.index);
  expect(await phone.page(one.copy.index, 'a-book.pdf', 'book')).toBe('a-book.pdf from the server');
  expect(await phone.part(one.copy.index, 'office.js', 'book')).toBe('office.js from the server');
  expect(await phone.part(one.copy.index, '_astro/looks.AAAAAAAA.css', 'book')).toBe('a{}');
});

it('before the core is here pages come from the server, and what has come only opens when it is gone', async () => {
  let isGone = false;
  const phone = aPhone((path) => {
    if (path.startsWith('copy/') && !path.startsWith('copy/guides-2')) return servesPacks(one.copy)(path);
    return isGone || path.startsWith('copy/') ? nothing() : new Response('from the server');
  });
  expect((await phone.visit(one.copy.index)).standing).toBe('begun');
  expect(await phone.page(one.copy.index, 'about/')).toBe('from the server');
  isGone = true;
  expect(await phone.page(one.copy.index, 'about/')).toBe('<p>about/ of one</p>');
  expect(await phone.page(one.copy.index, 'sources/')).toBe('<p>no-signal/ of one</p>');
});

it('an edition takes over every pack that did not change, and fetches the others', async () => {
  const { phone, deploy } = standing();
  await phone.visit(one.copy.index);
  const changed = aSite('one', { 'guides/a/index.html': '<p>guides/a/ of one, mended</p>' });
  const same = changed.copy.index.parts.filter(({ file }) => one.copy.packs.has(file));
  expect(same.length).toBe(changed.copy.index.parts.length - 1);
  deploy(changed.copy);
  phone.asked.length = 0;
  expect((await phone.visit(changed.copy.index)).is).toBe('whole');
  expect(phone.asked).toHaveLength(1);
  expect(await phone.page(changed.copy.index, 'guides/a/')).toContain('mended');
  expect(await phone.page(changed.copy.index, 'checks/')).toBe('<p>checks/ of one</p>');
});

it('goes back to an edition that is still whole without fetching anything', async () => {
  const { phone, deploy } = standing();
  await phone.visit(one.copy.index);
  deploy(two.copy, 4);
  await phone.visit(two.copy.index);
  phone.asked.length = 0;
  deploy(one.copy);
  expect(await phone.visit(one.copy.index)).toMatchObject({ is: 'whole', older: undefined });
  expect(phone.asked).toEqual([]);
  await expectEdition(phone, one.copy, 'one');
});

it('whoever saves data gets the core, and the rest when they ask for it, also over several visits', async () => {
  const { phone, deploy } = standing();
  const state = await phone.visit(four.copy.index, { savesData: true }).catch(() => undefined);
  expect(state?.is).toBe('stopped');
  deploy(four.copy);
  const core = await phone.visit(four.copy.index, { savesData: true });
  expect(core).toMatchObject({ is: 'waiting', standing: 'core' });
  expect(copyLine(core, 'phone')).toMatch(/^Guides, calculators and search work with no signal\. The rest, 0\.0 MB, waits because you save data\.$/);
  const before = phone.asked.length;
  await phone.visit(four.copy.index, { savesData: true });
  expect(phone.asked).toHaveLength(before);
  deploy(four.copy, 2);
  expect((await phone.visit(four.copy.index, { savesData: true, isAsked: true })).is).toBe('stopped');
  deploy(four.copy);
  expect((await phone.visit(four.copy.index, { savesData: true })).is).toBe('whole');
});

it('whoever saves data and has the core is promised no more than that when a newer copy can be had', async () => {
  const { phone, deploy } = standing();
  await phone.visit(one.copy.index, { savesData: true });
  deploy(two.copy);
  phone.asked.length = 0;
  const state = await phone.visit(two.copy.index, { savesData: true });
  expect(state).toMatchObject({ is: 'waiting', older: 'core' });
  expect(phone.asked).toEqual([]);
  expect(copyLine(state, 'phone')).toBe('Guides, calculators and search work with no signal. A newer copy can be had.');
  expect(await phone.page(two.copy.index, 'sources/')).toBe('<p>no-signal/ of one</p>');
});

it('whoever saves data and has a whole copy is spared a newer one until they ask', async () => {
  const { phone, deploy } = standing();
  await phone.visit(one.copy.index);
  deploy(two.copy);
  phone.asked.length = 0;
  const state = await phone.visit(two.copy.index, { savesData: true });
  expect(state).toMatchObject({ is: 'waiting', older: 'whole' });
  expect(phone.asked).toEqual([]);
  await expectEdition(phone, two.copy, 'one');
  expect((await phone.visit(two.copy.index, { savesData: true, isAsked: true })).is).toBe('whole');
});
