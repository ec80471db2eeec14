/** What `public/office.js` does before the first paint, for a page where it did not come: then the sheet is still there. For whoever reads what an office says. */
const sheet = document.querySelector('#holdwater');
if (sheet) {
  globalThis.holdwaterOffice = getComputedStyle(sheet).getPropertyValue('--holdwater-office');
  sheet.remove();
}
