import { useEffect, useState } from 'preact/hooks';
import type { NumberInput } from '../kit/inputs.ts';
import { doubtAbout, readCell } from '../kit/read.ts';
import type { UnitSystem } from '../units/units.ts';

interface DoubtProps {
  readonly cell: NumberInput;
  readonly text: string;
  readonly system: UnitSystem;
}

/** A number half typed looks wrong as a rule. */
const pauseMs = 900;

/** Asks about a number that looks wrong, under its field, once somebody has stopped typing. */
export function Doubt({ cell, text, system }: DoubtProps) {
  const [settled, setSettled] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setSettled(text), pauseMs);
    return () => clearTimeout(timer);
  }, [text]);
  const reading = readCell(cell, text, system);
  const doubt = 'value' in reading && typeof reading.value === 'number' ? doubtAbout(cell, reading.value, system) : undefined;
  if (doubt === undefined || settled !== text) return null;
  return (
    <p class="doubt" role="status">
      {doubt}
    </p>
  );
}
