// Stops the page for a moment, before any calculator is painted: while a link or what was typed before waits for its numbers, the built example must not pass for them.
(() => {
  const root = document.documentElement;
  try {
    // Who keeps a place finds the way to its gate on the home page.
    if (localStorage.getItem('holdwater-open')) root.dataset.place = '';
    const isKept = Object.keys(sessionStorage).some((key) => key.startsWith(`holdwater-form:${location.pathname}#`));
    const isRecordKept = Object.keys(localStorage).some((key) => key.startsWith('holdwater-record:'));
    if (isKept || isRecordKept || localStorage.getItem('holdwater-units') === 'si' || localStorage.getItem('holdwater-open'))
      root.dataset.opening = '';
  } catch {
    // Storage is switched off here: nothing was kept.
  }
  if (location.search !== '') root.dataset.opening = '';
})();
