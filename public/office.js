holdwaterOffice = getComputedStyle(office).getPropertyValue('--holdwater-office');
office.remove();
