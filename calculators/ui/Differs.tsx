import { isManaged } from '../kit/screen.ts';
import { isShown, type Texts } from '../kit/state.ts';
import { Fields } from './Fields.tsx';
import type { SideNames } from './formState.ts';
import type { SideProps } from './props.ts';

interface DiffersProps {
  readonly mine: Omit<SideProps, 'keys'>;
  readonly theirs: Omit<SideProps, 'keys'>;
  /** What is asked of both sides; a tally's counts stand together. */
  readonly apart: readonly (readonly [string, ...string[]])[];
  readonly names: SideNames;
  readonly onNames: (names: SideNames) => void;
  readonly onLetDiffer: (key: string) => void;
}

/** Inputs of the management that could differ and do not. */
function others({ calculator, texts }: { readonly calculator: SideProps['calculator']; readonly texts: Texts }, keys: readonly string[]) {
  return Object.entries(calculator.inputs).filter(([key, input]) => isManaged(input) && isShown(input, texts) && !keys.includes(key));
}
/** A name stands over a picture that is half a phone wide. */
const longestName = 30;

/** What two managements do differently, side by side; nothing else is asked twice. */
export function Differs({ mine, theirs, apart, names, onNames, onLetDiffer }: DiffersProps) {
  const { calculator, id } = mine;
  const left = others(mine, apart.flat());
  const column: SideProps['wantsColumn'] = (_, __, cell) => cell.belongsTo === 'management';
  return (
    <>
      <div class="both is-names">
        {(['this', 'that'] as const).map((side, place) => (
          <p class={`is-${side}`} key={side}>
            <label class={`who word-${side}`} for={`${id}-name-${side}`}>
              Call {side} side
            </label>
            <input
              id={`${id}-name-${side}`}
              class="name-field"
              type="text"
              autocomplete="off"
              maxLength={longestName}
              placeholder={side === 'this' ? 'This' : 'That'}
              value={names[place]}
              onInput={({ currentTarget: { value } }) => onNames(place === 0 ? [value, names[1]] : [names[0], value])}
            />
          </p>
        ))}
      </div>
      {apart.map((keys) => {
        const [key] = keys;
        const input = calculator.inputs[key];
        if (!input || (!isShown(input, mine.texts) && !isShown(input, theirs.texts))) return null;
        const isNumber = input.kind === 'number' && keys.length === 1;
        return (
          <div class={`ask both-ask${isNumber ? ' is-number' : ''}`} key={key}>
            {keys.length === 1 && (
              <p class="both-name" aria-hidden="true">
                {input.label}
              </p>
            )}
            {keys.length === 1 && 'help' in input && input.help && <small class="field-hint">{input.help}</small>}
            <div class={isNumber ? 'both is-number' : 'both'}>
              <div class="is-this">
                <span class="who word-this">{names[0] || 'This'}</span>
                <Fields {...mine} of={names[0] || 'This side'} wantsColumn={column} canAddRows={false} keys={keys} />
              </div>
              <div class="is-that">
                <span class="who word-that">{names[1] || 'That'}</span>
                <Fields {...theirs} of={names[1] || 'That side'} wantsColumn={column} canAddRows={false} keys={keys} />
              </div>
            </div>
          </div>
        );
      })}
      {left.length > 0 && (
        <details class="let-differ">
          <summary>Let another thing differ</summary>
          <p class="let-differ-list">
            {left.map(([key, input]) => (
              <button type="button" key={key} onClick={() => onLetDiffer(key)}>
                {input.label}
              </button>
            ))}
          </p>
        </details>
      )}
    </>
  );
}
