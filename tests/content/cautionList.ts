/** A caution that somebody must be given, and where it belongs. */
export interface Wanted {
  readonly name: string;
  /** Guides of its subject: each of them says it. */
  readonly guides: readonly string[];
  /** One paragraph, list item or caution must hold all of these. */
  readonly says: readonly RegExp[];
  /** Calculator whose number the caution is about: where it stands in the guide, the caution stands before it. */
  readonly before?: string;
}

const stretching = ['stretching-winter-feed', 'bridging-with-hay', 'feeding-on-dry-grass'];
const hay = ['bridging-with-hay', 'buying-and-storing-hay'];
const afterRain = ['turning-out-again', 'handling-stressed-forage', 'resting-grass'];
const animals = ['choosing-who-goes', 'selling-or-feeding', 'weaning-early', 'pulling-stock-early', 'bridging-with-hay'];
const digging = ['showing-soil-to-a-crowd', 'letting-water-in', 'loosening-packed-ground'];

/**
 * Practice of the trade (common practice): each of these has killed or maimed stock or people, or cost somebody a neighbor.
 * The words to look for are the least that such a caution must name; how it is said is the guide's own affair.
 */
export const wanted: readonly Wanted[] = [
  { name: 'change feed slowly; too much grain kills', guides: [...stretching, 'weaning-early'], says: [/grain/i, /slow|weeks|days/i] },
  { name: 'urea', guides: stretching, says: [/\burea\b|protein nitrogen/i, /used to|kill|poison|dead|slow/i] },
  { name: 'cattle feed with monensin kills horses', guides: [...stretching, 'sheep-goats-and-horses'], says: [/monensin/i, /horse/i] },
  { name: 'copper in cattle mineral poisons sheep', guides: [...stretching, 'sheep-goats-and-horses'], says: [/copper/i, /sheep/i] },
  {
    name: 'salt-limited feed and thirst',
    guides: ['stretching-winter-feed', 'feeding-on-dry-grass', 'watering-stock'],
    says: [/\bsalt/i, /water|thirst/i],
  },
  { name: 'no ammonia on good hay', guides: ['stretching-winter-feed', 'bridging-with-hay'], says: [/ammonia/i, /good hay|quality hay|poor/i] },
  { name: 'blue-green algae', guides: ['watering-stock'], says: [/blue-green|algae/i, /dog/i], before: 'stock-water' },
  {
    name: 'thirsty stock let loose on water',
    guides: ['watering-stock'],
    says: [/ran dry|thirst/i, /too much at once/i, /veterinarian/i],
    before: 'stock-water',
  },
  { name: 'sulfate in water and sulfur in feed', guides: ['watering-stock'], says: [/sulfate/i, /sulfur|feed/i] },
  { name: 'bogging at a low pond', guides: ['watering-stock'], says: [/\bbog|mired|\bmud/i], before: 'stock-water' },
  { name: 'a reserve for a broken pump', guides: ['watering-stock'], says: [/three days|3 days/i, /pump|power|break|broke/i] },
  { name: 'wet hay heats', guides: hay, says: [/probe/i, /fire (?:service|department)/i] },
  { name: 'hay at 126 to 149 degrees', guides: hay, says: [/126 to 139/, /every day/i, /140/, /twice a day/i] },
  {
    name: 'net wrap, twine and wire in feed',
    guides: ['bridging-with-hay', 'choosing-a-feeding-place', 'stretching-winter-feed'],
    says: [/net wrap/i, /twine/i, /wire/i],
  },
  { name: 'a wet cow’s feed cannot all be made up on the day', guides: ['stretching-winter-feed'], says: [/wet/i, /percent/i, /paunch|digest/i] },
  {
    name: 'sparks in dry grass',
    guides: ['resting-grass', 'laying-out-paddocks', 'feeding-on-dry-grass', 'stretching-winter-feed', 'annual-range'],
    says: [/spark|exhaust|weld|mow/i, /fire/i, /dry/i],
  },
  // The stricter of two rows of the table: Penn State from 150, Cornell from 160.
  { name: 'hay from 150 degrees on', guides: hay, says: [/(?:At|from) 150[^.]*no hay is moved until the fire department is on the place/] },
  { name: 'stacks fall', guides: hay, says: [/stack/i, /fall|collapse|hollow|off stacks|roll/i] },
  { name: 'round bales and the loader', guides: hay, says: [/bale/i, /spear|grapple/i, /low/i] },
  { name: 'moldy hay', guides: hay, says: [/mold/i] },
  { name: 'blister beetles', guides: [...hay, 'sheep-goats-and-horses'], says: [/blister beetle/i, /horse/i] },
  { name: 'botulism in wrapped bales', guides: [...hay, 'sheep-goats-and-horses'], says: [/botulism/i, /horse/i] },
  { name: 'weeds, fire ants and ticks in bought hay', guides: hay, says: [/weed|seed/i, /fire ants/i, /tick/i] },
  { name: 'quarantines on hay', guides: hay, says: [/quarantine|permit/i, /hay/i] },
  { name: 'herbicide that lasts in hay', guides: hay, says: [/spray|herbicide|aminopyralid/i, /label|names? in writing|last/i] },
  {
    name: 'failed crops, sprays and treated seed',
    guides: ['sowing-a-feed-crop', 'bridging-with-hay'],
    says: [/treated seed|seed treat|failed crop/i, /label|barred|days/i],
  },
  { name: 'drug withdrawal before selling', guides: [...animals, 'stocking-for-the-dry-year', 'start-here'], says: [/withdrawal/i] },
  { name: 'prussic acid in regrowth', guides: afterRain, says: [/prussic/i, /rain|frost/i] },
  {
    name: 'nitrate: drought forage, tested by a laboratory',
    guides: ['handling-stressed-forage', 'bridging-with-hay', 'sowing-a-feed-crop'],
    says: [/nitrate/i, /laboratory/i],
    before: 'feed-hazards',
  },
  {
    name: 'how fast nitrate is eaten matters',
    guides: ['handling-stressed-forage'],
    says: [/nitrate/i, /speed|fast|hungry meal/i, /half/i],
    before: 'feed-hazards',
  },
  // Purdue and Michigan State; three weeks are the longer of their waits.
  {
    name: 'silo gas',
    guides: ['handling-stressed-forage', 'sowing-a-feed-crop'],
    says: [/three weeks/i, /never go in/i, /after somebody/i, /911/, /dogs/i],
    before: 'feed-hazards',
  },
  { name: 'green chop that heats', guides: ['handling-stressed-forage'], says: [/green chop/i, /heats/i, /nitrite/i], before: 'feed-hazards' },
  { name: 'perilla mint', guides: ['handling-stressed-forage'], says: [/perilla/i, /don't drive/i] },
  {
    name: 'wells, sumps and pits, and whoever goes in after somebody',
    guides: ['irrigating-on-short-water', 'watering-stock'],
    says: [/never climb into/i, /air can kill/i, /911/],
  },
  {
    name: 'prussic acid: hay and silage are no clearance',
    guides: ['handling-stressed-forage'],
    says: [/hay and silage are no clearance/i, /test/i],
    before: 'feed-hazards',
  },
  { name: 'prussic acid: dry or as is', guides: ['handling-stressed-forage'], says: [/500/, /dry/i, /200/, /as is/i], before: 'feed-hazards' },
  { name: 'indiangrass', guides: ['handling-stressed-forage'], says: [/indiangrass/i, /frost/i], before: 'feed-hazards' },
  { name: 'aflatoxin in drought corn', guides: ['handling-stressed-forage'], says: [/aflatoxin/i, /corn/i] },
  { name: 'moldy sweetclover', guides: ['handling-stressed-forage'], says: [/sweetclover/i, /bleed/i, /mold/i] },
  { name: 'listeria', guides: ['handling-stressed-forage'], says: [/listeria/i, /spoiled/i] },
  { name: 'listeria in bought bales', guides: ['buying-and-storing-hay'], says: [/listeria/i, /sheep/i] },
  { name: 'foxtail millet hay and horses', guides: ['handling-stressed-forage', 'buying-and-storing-hay'], says: [/foxtail/i, /horse/i] },
  { name: 'polio from sulfate', guides: ['watering-stock'], says: [/polio/i, /sulfate/i] },
  { name: 'first green and poison plants', guides: ['turning-out-again', 'resting-grass', 'handling-stressed-forage'], says: [/poison/i, /plant/i] },
  { name: 'bloat', guides: afterRain, says: [/bloat/i, /hungry|hay|dew/i] },
  { name: 'grass staggers', guides: ['turning-out-again'], says: [/staggers|tetany/i] },
  {
    name: 'worms in short grass',
    guides: ['turning-out-again', 'sheep-goats-and-horses', 'leaving-stubble'],
    says: [/worm|parasite/i, /short|inch|low/i],
  },
  {
    name: 'ergot and toxic fescue',
    guides: ['turning-out-again', 'handling-stressed-forage', 'leaving-stubble'],
    says: [/ergot|fescue/i, /toxi|poison|lame|heat|endophyte/i],
  },
  {
    name: 'the bottom inches of toxic fescue',
    guides: ['leaving-stubble', 'stretching-winter-feed', 'feeding-on-dry-grass'],
    says: [/fescue/i, /toxin/i, /bottom|lowest/i, /4 inches/i],
  },
  {
    name: 'both sides of nitrogen on saved fescue, and where none goes',
    guides: ['stretching-winter-feed'],
    says: [/nitrogen/i, /2019/, /2022/, /2024/, /nitrate/i, /60 pounds/i, /legumes are over 30 percent/i, /our own caution/i],
    before: 'standing-feed',
  },
  { name: 'acorns', guides: ['turning-out-again', 'handling-stressed-forage', 'annual-range'], says: [/acorn/i] },
  {
    name: 'horses founder on stressed grass',
    guides: ['sheep-goats-and-horses', 'turning-out-again', 'handling-stressed-forage'],
    says: [/founder|laminitis/i, /horse/i],
  },
  { name: 'thin and downer cows', guides: animals, says: [/can't walk|cannot walk|downer|down cow|can't rise|can't get up/i] },
  { name: 'heat and long hauls', guides: animals, says: [/heat|hot/i, /haul|truck|trailer|ship/i] },
  {
    name: 'hungry stock on new ground',
    guides: ['resting-grass', 'turning-out-again'],
    says: [/hungry|fill them|hay/i, /before you open|new ground|turn/i],
  },
  {
    name: 'a field strip never clears feed',
    guides: ['handling-stressed-forage', 'bridging-with-hay'],
    says: [/strip/i, /can't clear|never (?:a )?clear|doesn't clear|not clear/i],
    before: 'feed-hazards',
  },
  {
    name: 'someone to talk to',
    guides: [
      'stocking-for-the-dry-year',
      'choosing-who-goes',
      'telling-drought',
      'deciding-in-time',
      'pulling-stock-early',
      'selling-or-feeding',
      'weaning-early',
      'bridging-with-hay',
      'stretching-winter-feed',
      'leased-and-permitted-ground',
      'writing-follow-up',
      'getting-help-with-money',
      'living-with-fire',
      'feeding-in-a-pen',
      'writing-a-drought-plan',
    ],
    says: [/\{\{Local talk-to-someone\}\}/],
  },
  {
    name: 'lightning at field days',
    guides: ['showing-soil-to-a-crowd', 'where-rain-goes', 'letting-water-in', 'keeping-a-rain-record'],
    says: [/lightning|thunder/i],
  },
  { name: 'hammering rings: eyes', guides: digging, says: [/eye|glasses|goggles/i, /hammer|drive|driving|strik/i], before: 'ring-test' },
  {
    name: 'glass and water at a demonstration',
    guides: ['showing-soil-to-a-crowd', 'testing-if-soil-holds-together'],
    says: [/glass|jar/i, /water|break|child|crowd/i],
    before: 'rain-demonstration',
  },
  {
    name: 'drying forage in a microwave',
    guides: ['measuring-forage'],
    says: [/microwave/i, /(?:glass|cup|mug) of water/i, /smoke|fire/i],
    before: 'forage-on-hand',
  },
  {
    name: 'buried lines before digging or driving',
    guides: [...digging, 'watering-stock', 'growing-roots', 'laying-out-paddocks'],
    says: [/buried|underground/i, /line|cable|pipe/i],
  },
  { name: 'backflow from a stock tank', guides: ['watering-stock'], says: [/backflow|back into|siphon/i] },
  { name: 'clean tanks for hauled water', guides: ['watering-stock'], says: [/haul/i, /tank/i, /clean|never held|chemical|sanitary|food/i] },
  { name: 'a well pulled down near neighbors', guides: ['watering-stock'], says: [/well/i, /neighbor/i] },
  { name: 'weak ponds and dams', guides: ['watering-stock'], says: [/dam|pond/i, /permit|engineer|licensed/i] },
  {
    name: 'cisterns and closed tanks: nobody climbs in',
    guides: ['where-rain-goes', 'keeping-a-rain-record'],
    says: [/cistern/i, /climb|enter|go in/i, /911/],
  },
  { name: 'moving water', guides: ['where-rain-goes', 'keeping-a-rain-record'], says: [/water/i, /stay out/i] },
  { name: 'electric fence', guides: ['resting-grass', 'laying-out-paddocks'], says: [/energizer/i, /pacemaker|house current|barbed/i] },
  { name: 'tractors on slopes', guides: [...hay, 'loosening-packed-ground'], says: [/slope/i, /tractor|belt|roll/i] },
  {
    name: 'a nutritionist or veterinarian sets a ration',
    guides: [...stretching, 'feeding-the-herd', 'weaning-early'],
    says: [/nutritionist|veterinarian/i],
  },
  { name: 'place data in photographs', guides: ['writing-follow-up'], says: [/photo|picture/i, /place|location|coordinates/i] },
  { name: 'names and coordinates stay out of links', guides: ['writing-follow-up'], says: [/link/i, /name|coordinates/i] },
  { name: 'a link is as public as its mail', guides: ['writing-follow-up'], says: [/link/i, /public|anyone|forward|passed on/i] },
  {
    name: 'fog fever: fill them, go in by the hour, do not drive a sick one',
    guides: ['turning-out-again', 'sowing-a-feed-crop'],
    says: [/fog fever/i, /hay/i, /hours/i, /don't drive/i],
  },
  {
    name: 'sudden death after drought and rain may be anthrax',
    guides: ['turning-out-again'],
    says: [/anthrax/i, /do not open/i, /move it/i, /veterinarian/i, /the state decides/i, /dogs/i],
  },
  {
    name: 'anthrax is ruled out before a carcass is moved',
    guides: ['selling-or-feeding'],
    says: [/anthrax/i, /don't open or move/i, /veterinarian/i],
    before: 'feed-or-sell',
  },
  { name: 'state law on carcasses', guides: ['selling-or-feeding'], says: [/carcass/i, /state law/i, /coyotes|dogs/i], before: 'feed-or-sell' },
  {
    name: 'a downer is not hauled or dragged',
    guides: ['selling-or-feeding'],
    says: [/downer/i, /not hauled/i, /not dragged/i],
    before: 'feed-or-sell',
  },
  {
    name: 'cattle are worked before 10 a.m. in heat, and not that evening',
    guides: ['watering-stock', 'weaning-early', 'selling-or-feeding'],
    says: [/before 10 a\.m\./, /evening/i, /water/i],
  },
  { name: 'shade and the signs of heat', guides: ['watering-stock'], says: [/shade/i, /pant/i, /mouth/i, /veterinarian/i] },
  {
    name: 'a cistern is a confined space',
    guides: ['watering-stock', 'where-rain-goes'],
    says: [/never climb into a cistern/i, /air/i, /911/, /went in to help/i],
  },
  {
    name: 'aflatoxin and nitrate in corn that drought has hurt',
    guides: ['stretching-winter-feed'],
    says: [/aflatoxin/i, /nitrate/i, /laboratory/i, /test/i],
  },
  {
    name: 'bales and rollovers on slopes when feeding',
    guides: ['stretching-winter-feed'],
    says: [/bale low/i, /roll bar/i, /seat belt/i, /slope/i],
  },
  {
    name: 'foxtail millet hay is not for horses',
    guides: ['sowing-a-feed-crop', 'sheep-goats-and-horses'],
    says: [/foxtail/i, /not for horses/i, /kidney/i],
  },
  { name: 'hay and silage are no clearance for prussic acid', guides: ['sowing-a-feed-crop'], says: [/no clearance for prussic acid/i, /test it/i] },
  {
    name: 'listeria in silage and wrapped bales',
    guides: ['sheep-goats-and-horses'],
    says: [/listeria/i, /sheep and goats/i, /torn wrap/i, /veterinarian/i],
  },
  {
    name: 'an electric fence in dry grass: down, off, cleared',
    guides: ['resting-grass', 'reading-a-pasture', 'stretching-winter-feed'],
    says: [/electric/i, /dry grass/i, /fire/i, /\boff\b/i, /clear the line/i],
  },
  { name: 'call 811 before digging', guides: ['showing-soil-to-a-crowd', 'watering-stock'], says: [/call 811/i, /buried lines/i] },
  {
    name: 'heat and fire at a field day',
    guides: ['showing-soil-to-a-crowd'],
    says: [/heat/i, /shade/i, /911/, /exhaust/i],
    before: 'rain-demonstration',
  },
  {
    name: 'a sudden death may be anthrax: do not open it',
    guides: ['choosing-a-feeding-place', 'leaving-stubble'],
    says: [/anthrax/i, /don't open/i, /veterinarian/i, /dogs/i],
  },
  {
    name: 'the state says how a carcass is disposed of',
    guides: ['choosing-a-feeding-place'],
    says: [/carcass/i, /your state/i, /burn ban/i, /creek|dogs/i],
  },
  { name: 'when not to work stock in the heat', guides: ['choosing-who-goes'], says: [/10 a\.m\./, /shade/i, /water/i, /30 minutes/, /pant/i] },
  {
    name: 'welding and mowing where it is dry: cleared ground, water and a shovel',
    guides: ['annual-range', 'laying-out-paddocks', 'feeding-on-dry-grass'],
    says: [/weld/i, /clear 10 feet/i, /shovel/i],
  },
  { name: 'mowing hay ground before the heat', guides: ['buying-and-storing-hay'], says: [/\bmow/i, /morning/i, /spark/i] },
  { name: 'a tractor by a gully or on a slope', guides: ['keeping-soil-home', 'laying-out-paddocks'], says: [/tractor/i, /roll/i, /slope|depth/i] },
  { name: 'fog fever: from dry range to lush feed', guides: ['annual-range'], says: [/fog fever/i, /hay/i, /don't drive/i, /veterinarian/i] },
  {
    name: 'nothing is sold, buried, cut or started before the office was asked',
    guides: ['getting-help-with-money'],
    says: [/don't sell, bury or render/i, /don't chop, graze or plow/i, /don't start a fence/i, /lender/i, /set-aside|contract/i],
  },
  {
    name: 'what seeding can do to stock and people: sprays in the ground, treated seed, nurse crops, slopes',
    guides: ['reseeding-or-waiting'],
    says: [/label/i, /treated seed/i, /nitrate/i, /laboratory/i, /slope/i],
  },
  {
    name: 'poison weeds, sprayed poison weeds, the label, sprays that last',
    guides: ['fighting-weeds-after-drought'],
    says: [/poison/i, /taste \*better\*/i, /14 days/, /label is the law/i, /hay and manure/i, /drift/i, /fire/i],
  },
  {
    name: 'nitrogen and drought grass: nitrate, staggers, toxic fescue, the open bag',
    guides: ['feeding-the-soil-after-drought'],
    says: [/nitrate/i, /laboratory/i, /staggers/i, /60 pounds/i, /bagged nitrogen/i],
  },
  {
    name: 'manure and litter: frozen ground, sprays, copper, botulism',
    guides: ['feeding-the-soil-after-drought'],
    says: [/frozen/i, /copper/i, /sheep/i, /botulism/i, /litter/i],
  },
  {
    name: 'saved grass: toxin, frost, ice, fire',
    guides: ['saving-grass-for-winter'],
    says: [/fescue/i, /4 inches/i, /frost/i, /6 inches of snow/i, /quarter inch of ice/i, /red-flag/i],
    before: 'standing-feed',
  },
  { name: 'bale grazing ends at the thaw; wrap off; wet draws', guides: ['saving-grass-for-winter'], says: [/thaw/i, /net wrap/i, /draw/i, /roll/i] },
  { name: 'snow is no water for nursing, weaned or thin cattle', guides: ['saving-grass-for-winter'], says: [/snow/i, /nurse/i, /weaned/i, /thin/i] },
  {
    name: 'short water: ask first, bloat, nitrate, blister beetles, wet pumps',
    guides: ['irrigating-on-short-water'],
    says: [/water is law/i, /nitrate/i, /laboratory/i, /bloat/i, /blister beetles/i, /lock out/i],
  },
  { name: 'walking a permit: snakes, heat, cages need a yes', guides: ['telling-how-much-was-taken'], says: [/snakes/i, /heat/i, /need a yes/i] },
  {
    name: 'fire: people first, gates open, nobody back in, power lines',
    guides: ['living-with-fire'],
    says: [/nobody dies for cattle/i, /throw every gate open/i, /don't go back/i, /power line/i],
  },
  {
    name: 'after a fire: no hauling of the lame, withdrawal, pictures first, ash and posts',
    guides: ['living-with-fire'],
    says: [/can't walk isn't hauled/i, /withdrawal/i, /pictures/i, /ash/i],
  },
  { name: 'burn bans and red-flag days', guides: ['living-with-fire'], says: [/burn bans/i, /no welding/i, /mowing/i] },
  {
    name: 'an animal that the heat has struck is cooled where it stands',
    guides: ['keeping-stock-cool'],
    says: [/neck stretched/i, /veterinarian/i, /leave it where it is/i, /don't drive it/i, /911/],
  },
  {
    name: 'cattle are worked before 10 a.m. in heat, and not that evening either',
    guides: ['keeping-stock-cool'],
    says: [/10 a\.m\./, /evening/i, /30 minutes/],
  },
  {
    name: 'a pen: permits, grain, roughage, tested feed, nutritionist, gates',
    guides: ['feeding-in-a-pen'],
    says: [/permit/i, /14 days/, /roughage/i, /nitrate/i, /sulfur/i, /monensin/i, /nutritionist/i, /crush/i],
  },
  {
    name: 'insect sprays: label, bees, water, days before grazing, blister beetles',
    guides: ['meeting-grasshoppers-and-armyworms'],
    says: [/label is the law/i, /bees/i, /fish/i, /count the days/i, /blister beetles/i, /horse/i],
  },
  {
    name: 'by the creek: permits, algae and mud, poison plants, clearing brush, moving water',
    guides: ['caring-for-streamsides'],
    says: [/permits/i, /algae/i, /bogs/i, /hemlock/i, /chain saws/i, /rising creek/i],
  },
  {
    name: 'mowers, sparks, protected nests, carcasses at water',
    guides: ['sparing-birds-and-wildlife'],
    says: [/shut off the power/i, /spark/i, /protected by law/i, /anthrax/i, /don't open/i],
  },
  {
    name: 'a plan moves animals: withdrawal, heat, tested feed, who must say yes',
    guides: ['writing-a-drought-plan'],
    says: [/withdrawal/i, /can't walk isn't hauled/i, /nitrate/i, /lender/i, /talk to/i],
  },
];
