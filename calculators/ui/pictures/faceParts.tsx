import type { Calculator } from '../../kit/define.ts';
import { printName } from '../../kit/print.ts';
import { convert, type UnitSystem } from '../../units/units.ts';
import { depthMarks } from './axis.ts';
import { frame } from './Face.tsx';
import { labelOf, type Side, tenth } from './readings.ts';

interface TapeProps {
  readonly x: number;
  /** Where the ground begins. */
  readonly sky: number;
  readonly soilUnits: number;
  readonly deepIn: number;
  readonly system: UnitSystem;
  readonly pair: boolean;
}
/** The tape that hangs between the faces, or beside the only one. */
export function Tape({ x, sky, soilUnits, deepIn, system, pair }: TapeProps) {
  const unit = system === 'us' ? 'in' : 'mm';
  const marks = depthMarks(deepIn, system).map((mark) => ({ mark, y: tenth(sky + convert(mark, unit, 'in') * soilUnits) }));
  return (
    <g class="tape">
      <path class="marks" d={marks.map(({ y }) => `${pair ? `M${x + 1} ${y}h4` : ''}M${x + frame.tape - 5} ${y}h4`).join('')} />
      {marks.map(({ mark, y }) => (
        <text key={mark} x={x + frame.tape / 2} y={y} dy=".36em">
          {mark === 0 ? unit : mark}
        </text>
      ))}
    </g>
  );
}

const marks = {
  rain: 'M13 2l-3 8M7 7l-3 8M15 11l-2 6',
  'runs-off': 'M1 7v6h9v4l9-7-9-7v4z',
  held: 'M10 2q6 8 6 11a6 6 0 0 1-12 0q0-3 6-11z',
  soaks: 'M7 1v9H3l7 9 7-9h-4V1z',
  roots: 'M10 1v8q-1 5-5 9M10 9q1 5 5 9M10 6q-4 2-6 6M10 6q4 2 6 6',
  holds: 'M4 2v15h12V2',
  water: 'M10 2q6 8 6 11a6 6 0 0 1-12 0q0-3 6-11z',
  missing: 'M10 2q6 8 6 11a6 6 0 0 1-12 0q0-3 6-11z',
} as const;
export type MarkedName = readonly [keyof typeof marks, string];

interface LabelsProps {
  readonly calculator: Calculator;
  readonly names: readonly MarkedName[];
  readonly sides: readonly Side[];
  readonly system: UnitSystem;
}
/** The numbers stand in type of the page's own size under their face, what they are between them, with the mark that it has in the picture. */
export function FaceLabels({ calculator, names, sides, system }: LabelsProps) {
  const [first, second] = sides;
  const cell = (side: Side | undefined, name: string) => side && <td>{printName(calculator, side.outcome.values, name, system)}</td>;
  return (
    <table class="face-labels">
      {second && (
        <thead class="picture-said">
          <tr>
            <th scope="col">{first?.title}</th>
            <td />
            <th scope="col">{second.title}</th>
          </tr>
        </thead>
      )}
      <tbody>
        {names.map(([mark, name]) => (
          <tr key={mark}>
            {second && cell(first, name)}
            <th scope="row">
              <svg class={`mark ${mark}`} viewBox="0 0 20 20" width="18" height="18" aria-hidden="true">
                <path d={marks[mark]} />
              </svg>
              {labelOf(calculator, name)}
            </th>
            {cell(second ?? first, name)}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
