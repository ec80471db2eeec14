holdwaterOffice = getComputedStyle(edition).getPropertyValue('--holdwater-office');
edition.remove();
