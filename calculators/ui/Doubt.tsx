import { useEffect, useState } from 'preact/hooks';
import type { NumberInput } from '../kit/inputs.ts';
import { readCell } from '../kit/read.ts';
import type { UnitSystem } from '../units/units.ts';

interface DoubtProps {
  readonly id: string;
  readonly cell: NumberInput;
  readonly text: string;
  readonly system: UnitSystem;
}

/** A number half typed looks wrong as a rule. */
const pauseMs = 900;

/** Asks about a number that looks wrong, under its field, once somebody has stopped typing; what knows so is fetched then. */
export function Doubt({ id, cell, text, system }: DoubtProps) {
  const [doubt, setDoubt] = useState<string | undefined>(undefined);
  useEffect(() => {
    setDoubt(undefined);
    const ask = async () => {
      const { doubtAbout } = await import('../kit/doubts.ts');
      const reading = readCell(cell, text, system);
      setDoubt('value' in reading && typeof reading.value === 'number' ? doubtAbout(cell, reading.value, system) : undefined);
    };
    // Without signal nobody is asked; the number is taken all the same.
    const timer = setTimeout(() => void ask().catch(console.info), pauseMs);
    return () => clearTimeout(timer);
  }, [text, system]);
  // There before it says anything: what comes filled is not read aloud.
  return (
    <p class="doubt" role="status" id={id}>
      {doubt}
    </p>
  );
}
