// Takes the office's values out of its file before anything is painted; whatever else stands in the file is gone with it.
(() => {
  holdwaterOffice = getComputedStyle(document.documentElement).getPropertyValue('--holdwater-office').trim();
  document.currentScript.previousElementSibling.remove();
})();
