import type { UnitName } from '../../units/units.ts';

const amount = <U extends UnitName>(label: string, symbol: string, unit: U, digits: number) =>
  ({ kind: 'number', label, symbol, unit, digits }) as const;
const word = <W extends string>(label: string, words: Readonly<Record<W, string>>) => ({ kind: 'word', label, words }) as const;
const inches = (label: string, symbol: string, digits = 1) => amount(label, symbol, 'in', digits);
const centimetres = (label: string, symbol: string, digits = 2) => amount(label, symbol, 'cm', digits);
const minutes = (label: string, symbol: string) => amount(label, symbol, 'min', 0);

export const quantities = {
  ponds: word('Does water stand?', { never: 'None of it runs off: this ground keeps up', stands: 'Yes' }),
  bookCmPerHr: amount('Book value of the rate when soaked', 'K_{book}', 'cm/hr', 3),
  suctionCm: centimetres('Suction at the wetting front', '\\psi'),
  poreShare: amount('Pores that water can fill, share of the volume', '\\theta_e', 'ratio', 3),
  usedFilledPercent: amount('Pores filled before the rain', 's', 'pct', 0),
  roomShare: amount('Room for water, share of the volume', '\\Delta\\theta', 'ratio', 3),
  ringRatio: amount('This ground against the book’s, by your ring tests', 'q', 'ratio', 2),
  conductivityCmPerHr: amount('Rate when soaked (conductivity)', 'K', 'cm/hr', 3),
  pullCm: centimetres('Suction times room', 'G'),
  lines: {
    kind: 'rows',
    label: 'Stretch by stretch',
    shown: ['fromMin', 'rateInPerHr', 'standsMin', 'infiltratedIn', 'runoffIn'],
    columns: {
      fromMin: minutes('From minute', 't_0'),
      lastsMin: minutes('Lasts', 't'),
      rainCm: centimetres('Rain', 'P'),
      rateCmPerHr: amount('Rain rate', 'i', 'cm/hr', 2),
      rateInPerHr: amount('Rain rate', 'i_{in}', 'in/hr', 2),
      startCm: centimetres('Soaked in before', 'F_0'),
      dryMin: minutes('Until water stands', 't_p'),
      standsMin: minutes('Water stands for', 't_w'),
      whenPondedCm: centimetres('Soaked in by then', 'F_p'),
      afterCm: centimetres('Soaked in by the end', 'F'),
      goalCm: centimetres('What the equation must come to', 'F_p + K t_w'),
      balanceCm: centimetres('What it comes to with F', 'F - G ln'),
      infiltratedCm: centimetres('Soaks in', 'f'),
      infiltratedIn: inches('Soaks in', 'f_{in}', 2),
      runoffCm: centimetres('Runs off', 'R'),
      runoffIn: inches('Runs off', 'R_{in}', 2),
    },
  },
  totalMin: minutes('Rain lasts', 'T'),
  totalRainCm: centimetres('Rain, all of it', 'P_{all}'),
  totalRunoffCm: centimetres('Runs off, all of it', 'R_{all}'),
  totalSoakedCm: centimetres('Soaks in, all of it', 'F_{all}'),
  totalStandsMin: minutes('Water stands on the ground for', 'T_w'),
  beforeMin: minutes('Earlier stretches', 't_{before}'),
  firstDryMin: minutes('Into the stretch where it first stands', 't_{first}'),
  pondsAfterMin: minutes('Until water stands on the ground', 't_{pond}'),
  pondsAfterHr: amount('Until water stands on the ground', 't_{pond}', 'hr', 1),
  fellIn: inches('Rain, all of it', 'P', 2),
  runoffIn: inches('Runs off', 'Q'),
  soakedIn: inches('Soaks in', 'F'),
  lowRunoffIn: inches('Runs off if the ground is twice as fast', 'Q_{low}'),
  highRunoffIn: inches('Runs off if it is half as fast', 'Q_{high}'),
  otherBookCmPerHr: amount('Book value if loam and silt loam changed places', "K_{book}'", 'cm/hr', 3),
  otherRunoffIn: inches('Runs off if loam and silt loam changed places in the table', "Q'"),
  runoffPercent: amount('Share of the rain that runs off', 'q', 'pct', 0),
  runoffGal: { ...amount('Runs off each acre', 'V', 'gal', 0), significant: 2 },
  evenRunoffIn: inches('Would run off if the same rain came evenly over a day', 'Q_{even}'),
  endRateCmPerHr: amount('Rate at which it could still soak in at the end', 'f_{end}', 'cm/hr', 3),
  endRateInPerHr: amount('Could still soak in at the end', 'f_{end}', 'in/hr', 2),
  hardestInPerHr: amount('Hardest rain', 'i_{max}', 'in/hr', 1),
  curve: {
    kind: 'rows',
    label: 'Rain and intake over time',
    columns: {
      atHr: amount('Time', 't', 'hr', 2),
      rainInPerHr: amount('Rain', 'i', 'in/hr', 2),
      intakeInPerHr: amount('Soaks in', 'f', 'in/hr', 2),
      lostInPerHr: amount('Runs off', 'r', 'in/hr', 2),
    },
  },
} as const;
