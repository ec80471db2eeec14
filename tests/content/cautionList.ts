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

/** `before` is left out where the caution is about no number. */
const must = (name: string, guides: readonly string[], says: readonly RegExp[], before?: string): Wanted => ({
  name,
  guides,
  says,
  ...(before === undefined ? {} : { before }),
});

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
  must('change feed slowly; too much grain kills', [...stretching, 'weaning-early'], [/grain/i, /slow|weeks|days/i]),
  must('urea', stretching, [/\burea\b|protein nitrogen/i, /used to|kill|poison|dead|slow/i]),
  must('cattle feed with monensin kills horses', [...stretching, 'sheep-goats-and-horses'], [/monensin/i, /horse/i]),
  must('copper in cattle mineral poisons sheep', [...stretching, 'sheep-goats-and-horses'], [/copper/i, /sheep/i]),
  must('salt-limited feed and thirst', ['stretching-winter-feed', 'feeding-on-dry-grass', 'watering-stock'], [/\bsalt/i, /water|thirst/i]),
  must('no ammonia on good hay', ['stretching-winter-feed', 'bridging-with-hay'], [/ammonia/i, /good hay|quality hay|poor/i]),
  must('blue-green algae', ['watering-stock'], [/blue-green|algae/i, /dog/i], 'stock-water'),
  must('thirsty stock let loose on water', ['watering-stock'], [/ran dry|thirst/i, /too much at once/i, /veterinarian/i], 'stock-water'),
  must('sulfate in water and sulfur in feed', ['watering-stock'], [/sulfate/i, /sulfur|feed/i]),
  must('bogging at a low pond', ['watering-stock'], [/\bbog|mired|\bmud/i], 'stock-water'),
  must('a reserve for a broken pump', ['watering-stock'], [/three days|3 days/i, /pump|power|break|broke/i]),
  must('wet hay heats', hay, [/probe/i, /fire (?:service|department)/i]),
  must('hay at 126 to 149 degrees', hay, [/126 to 139/, /every day/i, /140/, /twice a day/i]),
  must(
    'net wrap, twine and wire in feed',
    ['bridging-with-hay', 'choosing-a-feeding-place', 'stretching-winter-feed'],
    [/net wrap/i, /twine/i, /wire/i],
  ),
  must('a wet cow’s feed cannot all be made up on the day', ['stretching-winter-feed'], [/wet/i, /percent/i, /paunch|digest/i]),
  must(
    'sparks in dry grass',
    ['resting-grass', 'laying-out-paddocks', 'feeding-on-dry-grass', 'stretching-winter-feed', 'annual-range'],
    [/spark|exhaust|weld|mow/i, /fire/i, /dry/i],
  ),
  // The stricter of two rows of the table: Penn State from 150, Cornell from 160.
  must('hay from 150 degrees on', hay, [/(?:At|from) 150[^.]*no hay is moved until the fire department is on the place/]),
  must('stacks fall', hay, [/stack/i, /fall|collapse|hollow|off stacks|roll/i]),
  must('round bales and the loader', hay, [/bale/i, /spear|grapple/i, /low/i]),
  must('moldy hay', hay, [/mold/i]),
  must('blister beetles', [...hay, 'sheep-goats-and-horses'], [/blister beetle/i, /horse/i]),
  must('botulism in wrapped bales', [...hay, 'sheep-goats-and-horses'], [/botulism/i, /horse/i]),
  must('weeds, fire ants and ticks in bought hay', hay, [/weed|seed/i, /fire ants/i, /tick/i]),
  must('quarantines on hay', hay, [/quarantine|permit/i, /hay/i]),
  must('herbicide that lasts in hay', hay, [/spray|herbicide|aminopyralid/i, /label|names? in writing|last/i]),
  must(
    'failed crops, sprays and treated seed',
    ['sowing-a-feed-crop', 'bridging-with-hay'],
    [/treated seed|seed treat|failed crop/i, /label|barred|days/i],
  ),
  must('drug withdrawal before selling', [...animals, 'stocking-for-the-dry-year', 'start-here'], [/withdrawal/i]),
  must('prussic acid in regrowth', afterRain, [/prussic/i, /rain|frost/i]),
  must(
    'nitrate: drought forage, tested by a laboratory',
    ['handling-stressed-forage', 'bridging-with-hay', 'sowing-a-feed-crop'],
    [/nitrate/i, /laboratory/i],
    'feed-hazards',
  ),
  must('how fast nitrate is eaten matters', ['handling-stressed-forage'], [/nitrate/i, /speed|fast|hungry meal/i, /half/i], 'feed-hazards'),
  // Purdue and Michigan State; three weeks are the longer of their waits.
  must(
    'silo gas',
    ['handling-stressed-forage', 'sowing-a-feed-crop'],
    [/three weeks/i, /never go in/i, /after somebody/i, /911/, /dogs/i],
    'feed-hazards',
  ),
  must('green chop that heats', ['handling-stressed-forage'], [/green chop/i, /heats/i, /nitrite/i], 'feed-hazards'),
  must('perilla mint', ['handling-stressed-forage'], [/perilla/i, /don't drive/i]),
  must(
    'wells, sumps and pits, and whoever goes in after somebody',
    ['irrigating-on-short-water', 'watering-stock'],
    [/never climb into/i, /air can kill/i, /911/],
  ),
  must('prussic acid: hay and silage are no clearance', ['handling-stressed-forage'], [/hay and silage are no clearance/i, /test/i], 'feed-hazards'),
  must('prussic acid: dry or as is', ['handling-stressed-forage'], [/500/, /dry/i, /200/, /as is/i], 'feed-hazards'),
  must('indiangrass', ['handling-stressed-forage'], [/indiangrass/i, /frost/i], 'feed-hazards'),
  must('aflatoxin in drought corn', ['handling-stressed-forage'], [/aflatoxin/i, /corn/i]),
  must('moldy sweetclover', ['handling-stressed-forage'], [/sweetclover/i, /bleed/i, /mold/i]),
  must('listeria', ['handling-stressed-forage'], [/listeria/i, /spoiled/i]),
  must('listeria in bought bales', ['buying-and-storing-hay'], [/listeria/i, /sheep/i]),
  must('foxtail millet hay and horses', ['handling-stressed-forage', 'buying-and-storing-hay'], [/foxtail/i, /horse/i]),
  must('polio from sulfate', ['watering-stock'], [/polio/i, /sulfate/i]),
  must('first green and poison plants', ['turning-out-again', 'resting-grass', 'handling-stressed-forage'], [/poison/i, /plant/i]),
  must('bloat', afterRain, [/bloat/i, /hungry|hay|dew/i]),
  must('grass staggers', ['turning-out-again'], [/staggers|tetany/i]),
  must('worms in short grass', ['turning-out-again', 'sheep-goats-and-horses', 'leaving-stubble'], [/worm|parasite/i, /short|inch|low/i]),
  must(
    'ergot and toxic fescue',
    ['turning-out-again', 'handling-stressed-forage', 'leaving-stubble'],
    [/ergot|fescue/i, /toxi|poison|lame|heat|endophyte/i],
  ),
  must(
    'the bottom inches of toxic fescue',
    ['leaving-stubble', 'stretching-winter-feed', 'feeding-on-dry-grass'],
    [/fescue/i, /toxin/i, /bottom|lowest/i, /4 inches/i],
  ),
  must(
    'both sides of nitrogen on saved fescue, and where none goes',
    ['stretching-winter-feed'],
    [/nitrogen/i, /2019/, /2022/, /2024/, /nitrate/i, /60 pounds/i, /legumes are over 30 percent/i, /our own caution/i],
    'standing-feed',
  ),
  must('acorns', ['turning-out-again', 'handling-stressed-forage', 'annual-range'], [/acorn/i]),
  must(
    'horses founder on stressed grass',
    ['sheep-goats-and-horses', 'turning-out-again', 'handling-stressed-forage'],
    [/founder|laminitis/i, /horse/i],
  ),
  must('thin and downer cows', animals, [/can't walk|cannot walk|downer|down cow|can't rise|can't get up/i]),
  must('heat and long hauls', animals, [/heat|hot/i, /haul|truck|trailer|ship/i]),
  must('hungry stock on new ground', ['resting-grass', 'turning-out-again'], [/hungry|fill them|hay/i, /before you open|new ground|turn/i]),
  must(
    'a field strip never clears feed',
    ['handling-stressed-forage', 'bridging-with-hay'],
    [/strip/i, /can't clear|never (?:a )?clear|doesn't clear|not clear/i],
    'feed-hazards',
  ),
  must(
    'someone to talk to',
    [
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
    [/\{\{Local talk-to-someone\}\}/],
  ),
  must(
    'lightning at field days',
    ['showing-soil-to-a-crowd', 'where-rain-goes', 'letting-water-in', 'keeping-a-rain-record'],
    [/lightning|thunder/i],
  ),
  must('hammering rings: eyes', digging, [/eye|glasses|goggles/i, /hammer|drive|driving|strik/i], 'ring-test'),
  must(
    'glass and water at a demonstration',
    ['showing-soil-to-a-crowd', 'testing-if-soil-holds-together'],
    [/glass|jar/i, /water|break|child|crowd/i],
    'rain-demonstration',
  ),
  must('drying forage in a microwave', ['measuring-forage'], [/microwave/i, /(?:glass|cup|mug) of water/i, /smoke|fire/i], 'forage-on-hand'),
  must(
    'buried lines before digging or driving',
    [...digging, 'watering-stock', 'growing-roots', 'laying-out-paddocks'],
    [/buried|underground/i, /line|cable|pipe/i],
  ),
  must('backflow from a stock tank', ['watering-stock'], [/backflow|back into|siphon/i]),
  must('clean tanks for hauled water', ['watering-stock'], [/haul/i, /tank/i, /clean|never held|chemical|sanitary|food/i]),
  must('a well pulled down near neighbors', ['watering-stock'], [/well/i, /neighbor/i]),
  must('weak ponds and dams', ['watering-stock'], [/dam|pond/i, /permit|engineer|licensed/i]),
  must('cisterns and closed tanks: nobody climbs in', ['where-rain-goes', 'keeping-a-rain-record'], [/cistern/i, /climb|enter|go in/i, /911/]),
  must('moving water', ['where-rain-goes', 'keeping-a-rain-record'], [/water/i, /stay out/i]),
  must('electric fence', ['resting-grass', 'laying-out-paddocks'], [/energizer/i, /pacemaker|house current|barbed/i]),
  must('tractors on slopes', [...hay, 'loosening-packed-ground'], [/slope/i, /tractor|belt|roll/i]),
  must('a nutritionist or veterinarian sets a ration', [...stretching, 'feeding-the-herd', 'weaning-early'], [/nutritionist|veterinarian/i]),
  must('place data in photographs', ['writing-follow-up'], [/photo|picture/i, /place|location|coordinates/i]),
  must('names and coordinates stay out of links', ['writing-follow-up'], [/link/i, /name|coordinates/i]),
  must('a link is as public as its mail', ['writing-follow-up'], [/link/i, /public|anyone|forward|passed on/i]),
  must(
    'fog fever: fill them, go in by the hour, do not drive a sick one',
    ['turning-out-again', 'sowing-a-feed-crop'],
    [/fog fever/i, /hay/i, /hours/i, /don't drive/i],
  ),
  must(
    'sudden death after drought and rain may be anthrax',
    ['turning-out-again'],
    [/anthrax/i, /do not open/i, /move it/i, /veterinarian/i, /the state decides/i, /dogs/i],
  ),
  must(
    'anthrax is ruled out before a carcass is moved',
    ['selling-or-feeding'],
    [/anthrax/i, /don't open or move/i, /veterinarian/i],
    'feed-or-sell',
  ),
  must('state law on carcasses', ['selling-or-feeding'], [/carcass/i, /state law/i, /coyotes|dogs/i], 'feed-or-sell'),
  must('a downer is not hauled or dragged', ['selling-or-feeding'], [/downer/i, /not hauled/i, /not dragged/i], 'feed-or-sell'),
  must(
    'cattle are worked before 10 a.m. in heat, and not that evening',
    ['watering-stock', 'weaning-early', 'selling-or-feeding'],
    [/before 10 a\.m\./, /evening/i, /water/i],
  ),
  must('shade and the signs of heat', ['watering-stock'], [/shade/i, /pant/i, /mouth/i, /veterinarian/i]),
  must('a cistern is a confined space', ['watering-stock', 'where-rain-goes'], [/never climb into a cistern/i, /air/i, /911/, /went in to help/i]),
  must('aflatoxin and nitrate in corn that drought has hurt', ['stretching-winter-feed'], [/aflatoxin/i, /nitrate/i, /laboratory/i, /test/i]),
  must('bales and rollovers on slopes when feeding', ['stretching-winter-feed'], [/bale low/i, /roll bar/i, /seat belt/i, /slope/i]),
  must('foxtail millet hay is not for horses', ['sowing-a-feed-crop', 'sheep-goats-and-horses'], [/foxtail/i, /not for horses/i, /kidney/i]),
  must('hay and silage are no clearance for prussic acid', ['sowing-a-feed-crop'], [/no clearance for prussic acid/i, /test it/i]),
  must('listeria in silage and wrapped bales', ['sheep-goats-and-horses'], [/listeria/i, /sheep and goats/i, /torn wrap/i, /veterinarian/i]),
  must(
    'an electric fence in dry grass: down, off, cleared',
    ['resting-grass', 'reading-a-pasture', 'stretching-winter-feed'],
    [/electric/i, /dry grass/i, /fire/i, /\boff\b/i, /clear the line/i],
  ),
  must('call 811 before digging', ['showing-soil-to-a-crowd', 'watering-stock'], [/call 811/i, /buried lines/i]),
  must('heat and fire at a field day', ['showing-soil-to-a-crowd'], [/heat/i, /shade/i, /911/, /exhaust/i], 'rain-demonstration'),
  must(
    'a sudden death may be anthrax: do not open it',
    ['choosing-a-feeding-place', 'leaving-stubble'],
    [/anthrax/i, /don't open/i, /veterinarian/i, /dogs/i],
  ),
  must('the state says how a carcass is disposed of', ['choosing-a-feeding-place'], [/carcass/i, /your state/i, /burn ban/i, /creek|dogs/i]),
  must('when not to work stock in the heat', ['choosing-who-goes'], [/10 a\.m\./, /shade/i, /water/i, /30 minutes/, /pant/i]),
  must(
    'welding and mowing where it is dry: cleared ground, water and a shovel',
    ['annual-range', 'laying-out-paddocks', 'feeding-on-dry-grass'],
    [/weld/i, /clear 10 feet/i, /shovel/i],
  ),
  must('mowing hay ground before the heat', ['buying-and-storing-hay'], [/\bmow/i, /morning/i, /spark/i]),
  must('a tractor by a gully or on a slope', ['keeping-soil-home', 'laying-out-paddocks'], [/tractor/i, /roll/i, /slope|depth/i]),
  must('fog fever: from dry range to lush feed', ['annual-range'], [/fog fever/i, /hay/i, /don't drive/i, /veterinarian/i]),
  must(
    'nothing is sold, buried, cut or started before the office was asked',
    ['getting-help-with-money'],
    [/don't sell, bury or render/i, /don't chop, graze or plow/i, /don't start a fence/i, /lender/i, /set-aside|contract/i],
  ),
  must(
    'what seeding can do to stock and people: sprays in the ground, treated seed, nurse crops, slopes',
    ['reseeding-or-waiting'],
    [/label/i, /treated seed/i, /nitrate/i, /laboratory/i, /slope/i],
  ),
  must(
    'poison weeds, sprayed poison weeds, the label, sprays that last',
    ['fighting-weeds-after-drought'],
    [/poison/i, /taste \*better\*/i, /14 days/, /label is the law/i, /hay and manure/i, /drift/i, /fire/i],
  ),
  must(
    'nitrogen and drought grass: nitrate, staggers, toxic fescue, the open bag',
    ['feeding-the-soil-after-drought'],
    [/nitrate/i, /laboratory/i, /staggers/i, /60 pounds/i, /bagged nitrogen/i],
  ),
  must(
    'manure and litter: frozen ground, sprays, copper, botulism',
    ['feeding-the-soil-after-drought'],
    [/frozen/i, /copper/i, /sheep/i, /botulism/i, /litter/i],
  ),
  must(
    'saved grass: toxin, frost, ice, fire',
    ['saving-grass-for-winter'],
    [/fescue/i, /4 inches/i, /frost/i, /6 inches of snow/i, /quarter inch of ice/i, /red-flag/i],
    'standing-feed',
  ),
  must('bale grazing ends at the thaw; wrap off; wet draws', ['saving-grass-for-winter'], [/thaw/i, /net wrap/i, /draw/i, /roll/i]),
  must('snow is no water for nursing, weaned or thin cattle', ['saving-grass-for-winter'], [/snow/i, /nurse/i, /weaned/i, /thin/i]),
  must(
    'short water: ask first, bloat, nitrate, blister beetles, wet pumps',
    ['irrigating-on-short-water'],
    [/water is law/i, /nitrate/i, /laboratory/i, /bloat/i, /blister beetles/i, /lock out/i],
  ),
  must('walking a permit: snakes, heat, cages need a yes', ['telling-how-much-was-taken'], [/snakes/i, /heat/i, /need a yes/i]),
  must(
    'fire: people first, gates open, nobody back in, power lines',
    ['living-with-fire'],
    [/nobody dies for cattle/i, /throw every gate open/i, /don't go back/i, /power line/i],
  ),
  must(
    'after a fire: no hauling of the lame, withdrawal, pictures first, ash and posts',
    ['living-with-fire'],
    [/can't walk isn't hauled/i, /withdrawal/i, /pictures/i, /ash/i],
  ),
  must('burn bans and red-flag days', ['living-with-fire'], [/burn bans/i, /no welding/i, /mowing/i]),
  must(
    'an animal that the heat has struck is cooled where it stands',
    ['keeping-stock-cool'],
    [/neck stretched/i, /veterinarian/i, /leave it where it is/i, /don't drive it/i, /911/],
  ),
  must('cattle are worked before 10 a.m. in heat, and not that evening either', ['keeping-stock-cool'], [/10 a\.m\./, /evening/i, /30 minutes/]),
  must(
    'a pen: permits, grain, roughage, tested feed, nutritionist, gates',
    ['feeding-in-a-pen'],
    [/permit/i, /14 days/, /roughage/i, /nitrate/i, /sulfur/i, /monensin/i, /nutritionist/i, /crush/i],
  ),
  must(
    'insect sprays: label, bees, water, days before grazing, blister beetles',
    ['meeting-grasshoppers-and-armyworms'],
    [/label is the law/i, /bees/i, /fish/i, /count the days/i, /blister beetles/i, /horse/i],
  ),
  must(
    'by the creek: permits, algae and mud, poison plants, clearing brush, moving water',
    ['caring-for-streamsides'],
    [/permits/i, /algae/i, /bogs/i, /hemlock/i, /chain saws/i, /rising creek/i],
  ),
  must(
    'mowers, sparks, protected nests, carcasses at water',
    ['sparing-birds-and-wildlife'],
    [/shut off the power/i, /spark/i, /protected by law/i, /anthrax/i, /don't open/i],
  ),
  must(
    'a plan moves animals: withdrawal, heat, tested feed, who must say yes',
    ['writing-a-drought-plan'],
    [/withdrawal/i, /can't walk isn't hauled/i, /nitrate/i, /lender/i, /talk to/i],
  ),
];
