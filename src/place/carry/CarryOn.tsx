import { useLayoutEffect, useState } from 'preact/hooks';
import { localDay } from '../../../calculators/units/days.ts';
import { printDay } from '../../../calculators/units/printQuantity.ts';
import type { Recent } from './recents.ts';

/** For whom a calculation is made, and by whom. */
export interface Names {
  readonly who: string;
  readonly by: string;
}
/** What the line under a form can do, once its script has come. */
export interface Carrying {
  readonly count: () => number;
  /** Takes a step back, and says which. */
  readonly undo: () => string;
  readonly recents: () => Promise<readonly Recent[]>;
  readonly forget: () => Promise<void>;
  readonly addressOf: (recent: Recent) => string;
  /** Before its link is followed. */
  readonly reopen: (recent: Recent) => void;
  /** Goes on with a copy. */
  readonly duplicate: () => Promise<string>;
  readonly names: () => Names;
  readonly name: (names: Names) => void;
  /** The open place is named above the form already. */
  readonly hasPlace: boolean;
  readonly listen: (hear: () => void) => () => void;
}

function RecentList({ list, carrying }: { readonly list: readonly Recent[]; readonly carrying: Carrying }) {
  const [isForgotten, setForgotten] = useState(false);
  if (list.length === 0 || isForgotten) return <p>{isForgotten ? 'Forgotten.' : 'Nothing yet. What you work out is listed here, on this device.'}</p>;
  return (
    <>
      <ul class="carry-list" aria-label="Recent calculations">
        {list.map((each) => (
          <li key={each.id}>
            <a href={carrying.addressOf(each)} onClick={() => carrying.reopen(each)}>
              <b>{each.title}</b>
              {each.whose !== '' && <span>{each.whose}</span>}
              <span>{each.says}</span>
              <small>{printDay(localDay(new Date(each.at)))}</small>
            </a>
          </li>
        ))}
      </ul>
      <button type="button" class="quiet" onClick={() => void carrying.forget().then(() => setForgotten(true))}>
        Forget all of these
      </button>
    </>
  );
}

function NameFields({ id, carrying }: { readonly id: string; readonly carrying: Carrying }) {
  const { who, by } = carrying.names();
  const fields = [...(carrying.hasPlace ? [] : [{ key: 'who', label: 'For', value: who }]), { key: 'by', label: 'By', value: by }] as const;
  return (
    <div class="carry-names">
      {fields.map(({ key, label, value }) => (
        <p key={key}>
          <label for={`${id}-${key}`}>{label}</label>
          <input
            id={`${id}-${key}`}
            type="text"
            autocomplete="off"
            maxLength={100}
            value={value}
            onInput={({ currentTarget }) => carrying.name({ ...carrying.names(), [key]: currentTarget.value })}
          />
        </p>
      ))}
      <p class="carry-how">Names go onto paper, into copied notes and calendars. No link carries them.</p>
    </div>
  );
}

type Open = 'recent' | 'names' | undefined;

/** One quiet line under a form. As built it only stands there; what it does comes with the first touch. */
export function CarryOn({ id, carrying }: { readonly id: string; readonly carrying?: Carrying }) {
  const [open, setOpen] = useState<Open>();
  const [list, setList] = useState<readonly Recent[] | undefined>();
  const [told, setTold] = useState('');
  // The first render must equal the built page.
  const [isLive, setLive] = useState(false);
  const [, redraw] = useState(0);
  useLayoutEffect(() => {
    setLive(true);
    return carrying?.listen(() => redraw((times) => times + 1));
  }, []);
  const live = isLive ? carrying : undefined;
  const { who, by } = live?.names() ?? { who: '', by: '' };
  const toggle = (which: Open) => setOpen(open === which ? undefined : which);
  return (
    <>
      <p class="carry-row">
        <button type="button" class="quiet" data-carry="undo" disabled={(live?.count() ?? 0) === 0} onClick={() => setTold(live?.undo() ?? '')}>
          Undo
        </button>
        <button
          type="button"
          class="quiet"
          data-carry="recent"
          aria-expanded={open === 'recent'}
          onClick={() => {
            toggle('recent');
            void live?.recents().then(setList);
          }}
        >
          Recent
        </button>
        <button type="button" class="quiet" data-carry="copy" onClick={() => void live?.duplicate().then(setTold)}>
          Duplicate
        </button>
        <button type="button" class="quiet" data-carry="names" aria-expanded={open === 'names'} onClick={() => toggle('names')}>
          {live?.hasPlace ? `By: ${by || '…'}` : `For: ${who || '…'} By: ${by || '…'}`}
        </button>
      </p>
      {open === 'recent' && list && live && <RecentList list={list} carrying={live} />}
      {open === 'names' && live && <NameFields id={`${id}-names`} carrying={live} />}
      <p class="carry-told" role="status">
        {told}
      </p>
    </>
  );
}
