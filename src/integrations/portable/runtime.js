// The first script of every page of a folder. From a disk a browser imports no module and fetches nothing, but it runs scripts: so every module, and every
// file of data, is a script here that hands over what it holds. What stands in capitals is put in when the folder is made.
(() => {
  const root = new URL('.', document.currentScript.src).href;
  /** For each module those that it imports. */
  const imports = IMPORTS;
  const scripts = new Map();
  const factories = new Map();
  const modules = new Map();
  const given = new Map();

  const own = (address) => {
    if (!address.startsWith(root)) throw new TypeError(`no script of this folder: ${address}`);
    return address;
  };
  const policy = globalThis.trustedTypes?.createPolicy('folder-file', { createScriptURL: own }) ?? { createScriptURL: own };

  /** Puts a script of the folder into the page, once. One that fails is forgotten, so that the next asking tries again. */
  function bring(file) {
    const coming = scripts.get(file);
    if (coming) return coming;
    const script = document.createElement('script');
    script.async = false;
    script.src = policy.createScriptURL(root + file);
    const brought = new Promise((done, fail) => {
      script.onload = done;
      script.onerror = () => {
        scripts.delete(file);
        script.remove();
        fail(new Error(`${file} could not be had from this folder`));
      };
    });
    scripts.set(file, brought);
    document.head.append(script);
    return brought;
  }

  function require(file) {
    const known = modules.get(file);
    if (known) return known.exports;
    const factory = factories.get(file);
    if (!factory) throw new Error(`${file} is missing from this folder`);
    const module = { exports: {} };
    // Before it runs: modules may import each other round in a ring.
    modules.set(file, module);
    try {
      factory(require, module, load);
    } catch (error) {
      modules.delete(file);
      throw error;
    }
    return module.exports;
  }

  /** In place of `import()`. */
  async function load(file) {
    const all = new Set([file]);
    for (const each of all) for (const next of imports[each] ?? []) all.add(next);
    await Promise.all([...all].filter((each) => !factories.has(each)).map(bring));
    return require(file);
  }

  globalThis.holdwaterFolder = {
    root,
    define(file, factory) {
      factories.set(file, factory);
      // A page's own first script, marked by the page.
      if (document.currentScript?.dataset.run !== undefined) require(file);
    },
    give: (file, data) => given.set(file, data),
    async read(file) {
      await bring(`${file}.js`);
      if (!given.has(file)) throw new Error(`${file} could not be had from this folder`);
      return given.get(file);
    },
  };

  // Some browsers keep a store for each page of a disk alone. What was chosen goes along with a link and a search there: the next page keeps it, too, and
  // finds out by the mark of the store it came from whether the two share one.
  const chosen = ['holdwater-units', 'holdwater-country', 'holdwater-by'];
  const storeKey = 'holdwater-store';
  const keepsKey = 'holdwater-keeps';
  const sentAlong = /[?&]holdwater-along=([^&#]*)/;
  const tell = () => {
    const keeps = localStorage.getItem(keepsKey);
    if (keeps) document.documentElement.dataset.keeps = keeps;
  };
  try {
    const along = sentAlong.exec(location.search);
    if (along) {
      // Before any other script looks at the address.
      history.replaceState(history.state, '', location.href.replace(sentAlong, ''));
      // A form writes a blank as a plus.
      const { store, ...texts } = JSON.parse(decodeURIComponent(along[1].replaceAll('+', ' ')));
      const isShared = localStorage.getItem(storeKey) === store;
      localStorage.setItem(keepsKey, isShared ? 'together' : 'by-page');
      if (isShared) localStorage.setItem('holdwater-shared', 'yes');
      else for (const key of chosen) if (typeof texts[key] === 'string') localStorage.setItem(key, texts[key]);
    }
    if (!localStorage.getItem(storeKey)) localStorage.setItem(storeKey, crypto.randomUUID());
    tell();
  } catch {
    // Storage is switched off here: nothing is kept, and nothing goes along.
  }
  /** What goes along to another page of the folder; nothing to any other address, or where nothing need or can. */
  const alongTo = (address) => {
    try {
      const { protocol, pathname } = new URL(address);
      if (protocol !== 'file:' || !address.startsWith(root) || !pathname.endsWith('.html') || pathname === location.pathname) return undefined;
      if (localStorage.getItem(keepsKey) === 'together') return undefined;
      const texts = Object.fromEntries(chosen.map((key) => [key, localStorage.getItem(key) ?? undefined]));
      return JSON.stringify({ store: localStorage.getItem(storeKey), ...texts });
    } catch {
      return undefined;
    }
  };
  const followed = ({ target }) => {
    const link = target instanceof Element ? target.closest('a[href]:not([download])') : null;
    const text = link && alongTo(link.href);
    if (!text) return;
    const { href } = link;
    const [path, ...anchor] = href.split('#');
    link.href = [`${path}${path.includes('?') ? '&' : '?'}holdwater-along=${encodeURIComponent(text)}`, ...anchor].join('#');
    // Whoever copies the link later copies it as it was.
    setTimeout(() => {
      link.href = href;
    });
  };
  const sent = ({ target }) => {
    const text = target.hasAttribute('action') && alongTo(target.action);
    if (!text) return;
    const field = document.createElement('input');
    Object.assign(field, { type: 'hidden', name: 'holdwater-along', value: text });
    target.append(field);
    setTimeout(() => field.remove());
  };
  for (const kind of ['click', 'auxclick']) addEventListener(kind, followed, true);
  addEventListener('submit', sent, true);
})();
