holdwaterOffice = getComputedStyle(holdwater).getPropertyValue('--holdwater-office');
holdwater.remove();
