// Keeps the whole site on the device. The two names in capitals are put in when the site is built.
const files = FILES;
const family = `holdwater ${new URL('./', self.location).pathname} `;
const cacheName = family + VERSION;
/** The office's file outlives every version: it is changed by putting another in its place. */
const officeCache = `holdwater-office ${new URL('./', self.location).pathname}`;
const keptPath = (file) => new URL(file, self.location).pathname;
const officePath = keptPath('./office.css');

/** A page that came by way of a redirect may not answer for an address; its content may. */
const withoutRedirect = (response) => (response.redirected ? new Response(response.body, { headers: response.headers }) : response);

async function keepAll() {
  const cache = await caches.open(cacheName);
  await Promise.all(
    files.map(async (file) => {
      const response = await fetch(new Request(keptPath(file), { cache: 'no-cache' }));
      if (!response.ok) throw new Error(`${file}: ${response.status}`);
      await cache.put(keptPath(file), withoutRedirect(response));
    }),
  );
  await askOffice().catch(() => undefined);
  await self.skipWaiting();
}

/** The copy before this one stays: a page opened from it may still ask for its parts. */
async function dropOld() {
  const older = (await caches.keys()).filter((name) => name.startsWith(family) && name !== cacheName);
  await Promise.all(older.slice(0, -1).map((name) => caches.delete(name)));
  await self.clients.claim();
}

/** What the network says of the office's file. A page that stands in its place, of a network that wants a name first, is no such file. */
async function askOffice() {
  const response = await fetch(new Request(officePath, { cache: 'no-cache' }));
  const cache = await caches.open(officeCache);
  const isSheet = response.headers.get('content-type')?.includes('css') === true;
  if (response.ok && isSheet) await cache.put(officePath, withoutRedirect(response.clone()));
  else if (response.status === 404 || response.status === 410) await cache.delete(officePath);
  return response;
}
/** The last one at once, and the network behind it: a new one holds from the next page on. */
async function office(event) {
  const last = await (await caches.open(officeCache)).match(officePath);
  if (!last) return askOffice();
  event.waitUntil(askOffice().catch(() => undefined));
  return last;
}

async function kept(path) {
  const options = { ignoreSearch: true, ignoreVary: true };
  const newest = await (await caches.open(cacheName)).match(path, options);
  if (newest) return newest;
  for (const name of await caches.keys()) {
    const older = name.startsWith(family) && (await (await caches.open(name)).match(path, options));
    if (older) return older;
  }
  return undefined;
}

async function answer(request) {
  const { pathname } = new URL(request.url);
  const isPage = request.mode === 'navigate';
  const found = (await kept(pathname)) ?? (isPage && !pathname.endsWith('/') ? await kept(`${pathname}/`) : undefined);
  if (found) return found;
  try {
    return await fetch(request);
  } catch (error) {
    const notFound = isPage && (await kept(keptPath('./404.html')));
    if (!notFound) throw error;
    return new Response(notFound.body, { status: 404, headers: notFound.headers });
  }
}

self.addEventListener('install', (event) => event.waitUntil(keepAll()));
self.addEventListener('activate', (event) => event.waitUntil(dropOld()));
self.addEventListener('fetch', (event) => {
  const { origin, pathname } = new URL(event.request.url);
  if (event.request.method === 'GET' && origin === self.location.origin)
    event.respondWith(pathname === officePath ? office(event) : answer(event.request));
});
