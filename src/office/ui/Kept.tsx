import type { Data } from '../../place/ui/edit.ts';
import { differing, textOf, valueAt } from '../draft.ts';

const mostNamed = 4;
function inWords(titles: readonly string[]): string {
  const more = titles.length - mostNamed;
  return titles.length === 0 ? '' : `They differ in: ${titles.slice(0, mostNamed).join(', ')}${more > 0 ? ` and ${more} more` : ''}.`;
}

interface OtherValuesProps {
  readonly data: Data;
  readonly here: Data;
  readonly onTake: () => void;
  readonly onGoOn: () => void;
}
/** The copy holds another office than the one that the work in the forms began from: said before anything is saved over it. */
export function OtherValues({ data, here, onTake, onGoOn }: OtherValuesProps) {
  return (
    <div class="place-bar" role="alert">
      <p>
        <b>This copy holds other values than the ones you began from.</b> The forms below still hold your own work. Save it as it is, and it takes the
        place of what this copy holds now. {inWords(differing(data, here))}
      </p>
      <p class="two-ways">
        <button type="button" onClick={onTake}>
          Take the values of this copy
        </button>
        <button type="button" onClick={onGoOn}>
          Go on with mine
        </button>
      </p>
      <p>Either way you can go back to the other afterward.</p>
    </div>
  );
}

interface BeforeProps {
  readonly data: Data;
  readonly before: Data;
  readonly onBack: () => void;
}
/** What stood in the forms before, within reach. */
export function Before({ data, before, onBack }: BeforeProps) {
  const name = textOf(valueAt(before, 'head.name'));
  return (
    <p class="part-back" role="status">
      What stood here before is kept too{name === '' ? '' : `: ${name}`}. {inWords(differing(data, before))}{' '}
      <button type="button" onClick={onBack}>
        Put it back
      </button>
    </p>
  );
}
