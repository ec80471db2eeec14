import { useRef, useState } from 'preact/hooks';
import { type Data, isFields, isList } from '../../place/ui/edit.ts';
import { goInto } from '../../place/ui/goInto.ts';
import { Fold, usePrinting } from '../../place/ui/Part.tsx';
import { isGiven, textOf, valueAt } from '../draft.ts';
import { countedIn, type OfficeField } from '../model/field.ts';
import { type OfficeSection, type OfficeStep, officeSteps } from '../model/fields.ts';
import { type Filling, idOf, OfficeFieldView } from './OfficeFields.tsx';

interface SectionProps {
  readonly section: OfficeSection;
  readonly filling: Filling;
}
const tableOf = ({ fields }: OfficeSection, path: string, filling: Filling, of?: string) => (
  <div class="place-fields">
    {fields.map((field) => (
      <OfficeFieldView key={field.at} field={field} path={`${path}.${field.at}`} of={of} filling={filling} />
    ))}
  </div>
);

/** `4 inches`, `2.4, –, 3.1 inches`. */
export const toldText = (field: OfficeField, value: ReturnType<typeof valueAt>): string => {
  const [text, unit] = [listedText(field, value), countedIn(field)];
  return text === '' || unit === '' ? text : `${text} ${unit}`;
};
function listedText({ kind, options }: OfficeField, value: ReturnType<typeof valueAt>): string {
  if (isList(value)) return kind === 'months' ? value.map((each) => textOf(each) || '–').join(', ') : '';
  const text = textOf(value);
  return options?.[text] ?? text;
}
/** On paper: what was filled in, and nothing of what was not. */
function Told({ section, path, filling }: SectionProps & { readonly path: string }) {
  return (
    <dl class="told-fields">
      {section.fields.map((field) => {
        const text = toldText(field, valueAt(filling.data, `${path}.${field.at}`));
        return text === '' ? null : (
          <div key={field.at}>
            <dt>{field.label}</dt>
            <dd>{text}</dd>
          </div>
        );
      })}
    </dl>
  );
}

function Rows({ section, filling, isPrinting }: SectionProps & { readonly isPrinting: boolean }) {
  const { at, rows } = section;
  const added = useRef<number | undefined>(undefined);
  const [taken, setTaken] = useState<{ readonly row: Data; readonly index: number } | undefined>(undefined);
  // Rows move up and down: what stood open at a place stands there no longer.
  const [round, setRound] = useState(0);
  const back = useRef<HTMLButtonElement>(null);
  const found = valueAt(filling.data, at);
  const list = isList(found) ? found : [];
  if (!rows) return null;
  const replace = (next: readonly Data[], from: typeof taken): void => {
    added.current = undefined;
    filling.replaceRows(at, next);
    setTaken(from);
    setRound((count) => count + 1);
  };
  const isWrong = (path: string): boolean => filling.tries > 0 && filling.wrongs.some((each) => each.at === path || each.at.startsWith(`${path}.`));
  return (
    <div class="parts">
      {list.map((row, index) => {
        const path = `${at}.${index}`;
        const one = `${rows.one} ${index + 1}`;
        const name = isFields(row) ? textOf(row[rows.by]) : '';
        const short = name.length > 60 ? `${name.slice(0, 60)}…` : name;
        // Opened anew by each try to save, so that what is to mend stands open.
        return (
          <Fold
            key={`${path} ${filling.tries} ${round}`}
            title={one}
            says={short}
            isOpenAtFirst={added.current === index || isWrong(path)}
            isPrinting={isPrinting}
          >
            {() =>
              isPrinting ? (
                <Told section={section} path={path} filling={filling} />
              ) : (
                <>
                  {tableOf(section, path, filling, one)}
                  <p class="part-take">
                    <button
                      type="button"
                      class="quiet"
                      onClick={() => {
                        replace(list.toSpliced(index, 1), { row, index });
                        requestAnimationFrame(() => back.current?.focus());
                      }}
                    >
                      Take {one.toLowerCase()} away
                    </button>
                  </p>
                </>
              )
            }
          </Fold>
        );
      })}
      {taken && !isPrinting && (
        <p class="part-back" role="status">
          {rows.one} {taken.index + 1} was taken away.{' '}
          <button
            ref={back}
            type="button"
            onClick={() => {
              replace(list.toSpliced(taken.index, 0, taken.row), undefined);
              requestAnimationFrame(() => document.getElementById(`${idOf(at)}-add`)?.focus());
            }}
          >
            Put it back
          </button>
        </p>
      )}
      {!isPrinting && (
        <p class="part-add">
          <button
            id={`${idOf(at)}-add`}
            type="button"
            onClick={() => {
              added.current = list.length;
              filling.put(at, [...list, {}]);
              goInto(idOf(`${at}.${list.length}`));
            }}
          >
            {rows.add}
          </button>
        </p>
      )}
    </div>
  );
}

function Section({ section, filling }: SectionProps) {
  const isPrinting = usePrinting();
  if (isPrinting && !isGiven(filling.data, section)) return null;
  // Of all of it together, and so of none of its fields.
  const wrong = filling.tries > 0 ? filling.wrongs.find(({ at }) => at === section.at) : undefined;
  return (
    <section>
      {section.title !== 'Your office' && <h3>{section.title}</h3>}
      {section.says !== undefined && !isPrinting && <p>{section.says}</p>}
      {wrong && !isPrinting && (
        <p class="problem" id={idOf(section.at)} tabIndex={-1}>
          {wrong.say}
        </p>
      )}
      {section.rows ? (
        <Rows section={section} filling={filling} isPrinting={isPrinting} />
      ) : isPrinting ? (
        <Told section={section} path={section.at} filling={filling} />
      ) : (
        tableOf(section, section.at, filling)
      )}
    </section>
  );
}

/** How far a step is, in a line. */
function saysOf({ sections }: OfficeStep, { data, wrongs }: Filling): string {
  const isIn = (at: string): boolean => sections.some((section) => at === section.at || at.startsWith(`${section.at}.`));
  const count = wrongs.filter(({ at }) => isIn(at)).length;
  if (count > 0) return `${count} to mend or fill in`;
  const given = sections.filter((section) => isGiven(data, section)).map(({ title }) => title);
  return given.length === 0 ? 'Skipped: nothing of yours' : given.join(', ');
}
interface StepsProps {
  readonly filling: Filling;
  readonly open: number | undefined;
  readonly onOpen: (step: number | undefined) => void;
}
/** Eight folds, of which one stands open. Each may be skipped. */
export function Steps({ filling, open, onOpen }: StepsProps) {
  const isPrinting = usePrinting();
  return (
    <>
      {officeSteps.map((step, index) => (
        <details
          key={step.title}
          class="group"
          id={`step-${index + 1}`}
          open={open === index || isPrinting}
          onToggle={(event) => {
            if (isPrinting) return;
            if (event.currentTarget.open) onOpen(index);
            else if (open === index) onOpen(undefined);
          }}
        >
          <summary>
            <span class="group-name">
              {index + 1}. {step.title}
            </span>
            <span class="group-says">{saysOf(step, filling)}</span>
            <span class="group-change" />
          </summary>
          {(open === index || isPrinting) && (
            <>
              {!isPrinting && <p>{step.says}</p>}
              {step.sections.map((section) => (
                <Section key={section.at} section={section} filling={filling} />
              ))}
              {!isPrinting && (
                <p class="part-add">
                  <button
                    type="button"
                    onClick={() => {
                      onOpen(index + 1 < officeSteps.length ? index + 1 : undefined);
                      requestAnimationFrame(() => {
                        const next = document.querySelector<HTMLElement>(
                          index + 1 < officeSteps.length ? `#step-${index + 2} > summary` : '#save-office',
                        );
                        next?.focus();
                        next?.scrollIntoView({ block: 'start' });
                      });
                    }}
                  >
                    {index + 1 < officeSteps.length ? `Go on to ${index + 2}. ${officeSteps[index + 1]?.title}` : 'Go on to saving'}
                  </button>
                </p>
              )}
            </>
          )}
        </details>
      ))}
    </>
  );
}
