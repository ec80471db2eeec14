holdwaterOffice = getComputedStyle(document.documentElement).getPropertyValue('--holdwater-office').trim();
if (holdwaterOffice === '{}') holdwaterOffice = undefined;
document.currentScript.previousElementSibling.remove();
