holdwaterOffice = getComputedStyle(document.documentElement).getPropertyValue('--holdwater-office').trim();
document.currentScript.previousElementSibling.remove();
