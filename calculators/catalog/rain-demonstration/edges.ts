import { always, defineEdges, edge, shows, tells, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

/** A square foot: an inch of wet soil in it weighs 9.17 lb. */
const foot = 'length=12in&width=12in&jars=not-yet';
/** A gallon's 3,785 mL on 231 square inches is an inch; filled in an hour it rains an inch an hour. */
const tray = 'length=21in&width=11in';
const oneInch = `${tray}&rain=1in`;

export default defineEdges(definition, {
  limits: {
    lengthIn: [4, 72],
    widthIn: [4, 72],
    soilIn: [0.5, 12],
    riseIn: [0, 24],
    rainIn: [0.1, 8],
    wantedInPerHr: [0.5, 12],
    holesCount: [1, 2000],
    otherMl: [20, 10_000],
    fillS: [2, 3600],
    spoonS: [2, 3600],
    firstRunS: [0, 7200],
    runoffMl: [0, 100_000],
    throughMl: [0, 100_000],
  },
  edges: [
    always('Trays rank, they don’t measure.'),
    always('Stop at the first thunder.'),
    always('Use plastic jars'),
    always('Set the stand on firm'),
    edge('Wet, this tray is more', { on: foot, raised: 'soil=10.91in', silent: 'soil=10.9in' }),
    edge('A wet tray of this size', { on: foot, raised: 'soil=10.9in', silent: 'soil=10.91in' }),
    edge('A wet tray of this size', { on: foot, raised: 'soil=4.91in', silent: 'soil=4.9in' }),
    // 15 percent off 2 in an hour: 2.3 and 1.7. A quart in 391.3 and in 529.4 seconds.
    edge('The head does not rain', { on: `${tray}&wanted=2in/hr&jar=quart`, raised: 'fill=391s', silent: 'fill=392s' }),
    edge('The head does not rain', { on: `${tray}&wanted=2in/hr&jar=quart`, raised: 'fill=530s', silent: 'fill=529s' }),
    edge('The head does not rain', { on: `${tray}&wanted=2in/hr&spoon=300s`, raised: 'head-from=jar', silent: 'head-from=one-hole' }),
    edge('Rain this hard is rare', { on: `${tray}&jar=quart`, raised: 'fill=149s', silent: 'fill=150s' }),
    edge('The trays differ in more', { raised: 'alike=no', silent: 'alike=yes' }),
    edge('The trays differ in more', { on: 'alike=no', raised: 'jars=read', silent: 'jars=not-yet' }),
    edge('Most of it ran off good sod', { on: `${oneInch}&cover=rested-sod`, raised: 'runoff=1893ml', silent: 'runoff=1892ml' }),
    edge('Most of it ran off good sod', { on: `${oneInch}&runoff=1900ml`, raised: 'cover=rested-sod', silent: 'cover=grazed-short' }),
    edge('The jars hold a little', { on: `${oneInch}&runoff=2000ml`, raised: 'through=1786ml', silent: 'through=1785ml' }),
    edge('This tray would stand steeper', { on: tray, raised: 'rise=10.6in', silent: 'rise=10.5in' }),
    edge('That would take over 5,000', { on: 'holes=2000', raised: 'wanted=7.52in/hr', silent: 'wanted=7.51in/hr' }),
    // A pint on 231 square inches is an eighth of an inch: a tenth in an hour is 4,500 s, so the jar is a smaller one.
    edge('This head hardly rains', { on: `${tray}&jar=other&fill=3600s`, raised: 'other=378ml', silent: 'other=379ml' }),
    edge('This head pours over 100', { on: `${tray}&jar=quart`, raised: 'fill=8.99s', silent: 'fill=9s' }),
    edge('You said that some ran off', { raised: 'runoff=0.9ml', silent: 'runoff=1ml' }),
    edge('You said that some ran off', { on: 'runoff=0ml', raised: 'ran=yes', silent: 'ran=no' }),
    edge('The two jars together hold', { on: `${oneInch}&runoff=2000ml`, raised: 'through=1862ml', silent: 'through=1861ml' }),
    turns('tells', { ranks: 'jars=read', 'not-poured': 'jars=not-yet' }),
    turns('tells', { ranks: 'alike=yes', unlike: 'alike=no' }),
    // A quart and a half pint, half a minute, a tray of 5 lb: less is told in smaller units or not at all.
    shows('pourGal', { on: 'jars=not-yet', shown: 'rain=0.201in', hidden: 'rain=0.2in' }),
    shows('pourQt', { on: 'rain=0.109in&jars=not-yet', shown: 'width=11.1in', hidden: 'width=11in' }),
    shows('rainMin', { on: 'width=51.8in&fill=2.25s&jars=not-yet', shown: 'rain=0.31in', hidden: 'rain=0.309in' }),
    tells('less than a minute', { on: 'width=51.8in&fill=2.25s&jars=not-yet', told: 'rain=0.309in', untold: 'rain=0.31in' }),
    shows('trayLb', { on: 'length=5.23in&jars=not-yet', shown: 'width=5.01in', hidden: 'width=5in' }),
  ],
});
