/** What faces are drawn of in tests: each calculator's example, its limits, and pairs. A pair has two queries. */
export const faceCases: Readonly<Record<string, readonly (readonly [string, string?])[]>> = {
  'storm-runoff': [
    [''],
    ['rain=0.01in'],
    ['rain=0.3in'],
    ['rain=30in&wetness=wet'],
    ['ground-cover=0pct'],
    ['ground-cover=100pct&grazing=rested'],
    ['', 'ground-cover=85pct&grazing=light'],
    ['rain=30in', 'rain=30in&ground-cover=100pct&grazing=rested'],
    ['rain=0.2in', 'rain=0.2in&ground-cover=85pct&grazing=light'],
  ],
  ponding: [
    [''],
    ['rain=0.05in'],
    ['rain=30in&hard=60min&texture=clay'],
    ['storm=spells'],
    ['', 'texture=sandy-loam'],
    ['rain=8in&texture=clay', 'rain=8in'],
  ],
  'ring-test': [[''], ['bore=48in&inserted=12in&water=30000ml'], ['bore=2in&inserted=0.5in&water=20ml'], ['bore=12in'], ['', 'moisture=wet']],
  'packed-soil': [[''], ['probe=pushed'], ['probe=pushed', 'probe=none'], ['', 'probe=pushed']],
  'cover-count': [
    [''],
    ['plant=100&litter=0&rock=0&bare=0'],
    ['plant=0&litter=0&rock=0&bare=100'],
    ['plant=1&litter=1&rock=97&bare=1'],
    ['', 'plant=50&litter=35&rock=3&bare=12'],
  ],
  'stored-water': [[''], ['roots-most=2in&roots-deepest=2in'], ['roots-most=48in&roots-deepest=48in'], ['', 'roots-most=30in&roots-deepest=40in']],
  'soil-loss': [
    [''],
    ['ground-cover=0pct&rain-factor=700&rise=72in'],
    ['ground-cover=100pct'],
    ['', 'ground-cover=85pct'],
    ['ground-cover=0pct', ''],
  ],
  'rain-on-ground': [[''], ['rain=30in'], ['rain=0.05in'], ['area=100000ac&rain=6in']],
  'stock-water': [[''], ['max-depth=40ft&length=5000ft&width=5000ft'], ['max-depth=3ft'], ['dead-depth=0ft'], ['', 'dead-depth=4ft']],
  'rain-demonstration': [[''], ['jars=not-yet'], ['soil=0.5in'], ['soil=12in'], ['', 'cover=rested-sod&runoff=300ml&through=900ml']],
};
/** Widths that a page gives them: a small phone, a phone, a wide screen. */
export const faceWidths = [306, 376, 608] as const;
