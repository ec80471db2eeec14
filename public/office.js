holdwaterOffice = getComputedStyle(officefile).getPropertyValue('--holdwater-office');
officefile.remove();
