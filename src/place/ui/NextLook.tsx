import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Visit } from '../model/visit.ts';
import { WrongTogether } from './aloud.tsx';
import { FieldsView } from './FieldView.tsx';
import { nextFields } from './fields/visit.ts';
import type { Change } from './session.ts';

interface NextLookProps {
  readonly id: string;
  readonly record: Visit;
  readonly system: UnitSystem;
  readonly onChange: (changes: readonly Change[]) => void;
}
/** The day of the next look, asked for in the visit and in its note. */
export const NextLook = (props: NextLookProps) => (
  <>
    <FieldsView fields={nextFields} path={[]} {...props} />
    <WrongTogether
      words={
        props.record.nextDay !== undefined && props.record.nextDay < props.record.day
          ? 'The next look comes before the visit. Look at both days.'
          : undefined
      }
    />
  </>
);
