// Stops the page for a moment, before anything is painted: where a country was picked, or an office gives its own, the values of the others must not flash by.
(() => {
  try {
    const picked = localStorage.getItem('holdwater-country') ?? (globalThis.holdwaterOffice?.length > 2 ? 'office' : '');
    if (!/^[a-z-]+$/.test(picked)) return;
    document.documentElement.dataset.country = picked;
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(
      `[data-local]:not([data-local="${picked}"]){display:none}[data-local="${picked}"]::details-content,[data-local-all]::details-content{content-visibility:visible}`,
    );
    document.adoptedStyleSheets = [sheet];
  } catch {
    // Storage is switched off here, or the browser is old: the page's own script does it a little later.
  }
})();
