import { defineEdges, edge, tells } from '../../kit/edges.ts';
import definition from './definition.ts';

export default defineEdges(definition, {
  limits: {
    rainIn: [0.05, 30],
    firstCanIn: [0.05, 30],
    secondCanIn: [0.05, 30],
    areaAc: [0.1, 100000],
    lengthFt: [50, 50000],
    widthFt: [50, 50000],
    longPacesCount: [20, 20000],
    shortPacesCount: [20, 20000],
    paceFt: [1, 7],
    roofLengthFt: [4, 2000],
    roofWidthFt: [4, 2000],
    caughtPercent: [5, 100],
    tankGal: [10, 1000000],
    tankAcrossFt: [1, 200],
    tankLengthFt: [1, 200],
    tankWidthFt: [1, 200],
    tankDepthFt: [0.5, 50],
    'stock.countHead': [1, 20000],
    'stock.ownGalPerDay': [0.1, 60],
    airF: [-20, 125],
  },
  edges: [
    edge('This is what fell, not', { raised: '', silent: 'surface=roof' }),
    edge('Roof water carries droppings, dust', { raised: 'surface=roof', silent: '' }),
    edge('Never climb into a cistern', { raised: 'surface=roof', silent: '' }),
    edge('Water weighs more than 8', { raised: 'surface=roof', silent: '' }),
    edge('This is less than three', { on: 'surface=roof', raised: 'rain=3.25in', silent: 'rain=3.26in' }),
    // A tenth of the larger one, whichever it is.
    edge('The two cans differ by', { on: 'rain-from=two-cans&second-can=10in', raised: 'first-can=8.99in', silent: 'first-can=9in' }),
    edge('The two cans differ by', { on: 'rain-from=two-cans&second-can=1in', raised: 'first-can=0.89in', silent: 'first-can=0.9in' }),
    edge('The two cans differ by', { on: 'rain-from=two-cans&first-can=1in', raised: 'second-can=1.12in', silent: 'second-can=1.11in' }),
    // A cow drinks 22 or 17.4 gallons by the lists, ten others 74.6: 96.6 to 92.0 is 1.05.
    tells('differ by less than 5 percent', {
      on: 'stock.kind=cow-nursing,other&stock.count=1,10',
      told: 'stock.own=15gal/d,7.47gal/d',
      untold: 'stock.own=15gal/d,7.45gal/d',
    }),
    // 16 square feet hold 9.97 gallons of an inch; a tenth of that reaches the tank.
    tells('less than a gallon', { on: 'surface=roof&roof-length=4ft&roof-width=4ft&caught=10pct', told: 'rain=1in', untold: 'rain=1.01in' }),
  ],
});
