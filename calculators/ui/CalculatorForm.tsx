import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Calculator, Outcome } from '../kit/define.ts';
import { type Input, sharesRows } from '../kit/inputs.ts';
import { toLink } from '../kit/link.ts';
import { canCompare, changeSystem, type Form, isShown, type Problem, startTexts, type Texts } from '../kit/state.ts';
import type { UnitSystem } from '../units/units.ts';
import { Actions } from './Actions.tsx';
import { Conventions } from './Conventions.tsx';
import type { DrawPicture } from './pictures/loadPicture.tsx';
import type { Tools } from './props.ts';
import type { Records } from './RecordField.tsx';
import { Answers, Large, leadOf, ResultsTable, RowsResults } from './Results.tsx';
import { ShortHelp } from './ShortHelp.tsx';
import { Side } from './Side.tsx';
import { otherTexts, type RanSide, runSide, sideTitles } from './sides.ts';
import type { ToolStore } from './tools/keptTool.ts';

export interface Opening {
  readonly form: Form;
  readonly system: UnitSystem;
  readonly notices: readonly string[];
}
export interface Change {
  readonly link: string;
  readonly form: Form;
  readonly system: UnitSystem;
  readonly outcome: Outcome | null;
  readonly other: Outcome | null;
}
export interface CalculatorFormProps {
  readonly calculator: Calculator;
  /** Begins every id on the page that is this form's. */
  readonly id: string;
  /** Applied before the first paint. The first render is always the default, for it must equal the built page. */
  readonly open?: () => Opening | null;
  readonly onChange?: (change: Change) => void;
  /** The whole address of a link, for copying, printing and the code to scan. */
  readonly address?: (link: string) => string;
  readonly onSystem?: (system: UnitSystem) => void;
  /** Draws a record, and keeps it, for a definition that asks for one. */
  readonly records?: Records['draw'];
  readonly keepRecord?: Exclude<Records['keep'], undefined>;
  /** Draws the picture that a definition has, if it has one. */
  readonly Picture?: DrawPicture | undefined;
  /** Draws the tools that a definition names. */
  readonly tools?: Tools['draw'];
  /** Where they keep their state. */
  readonly store?: ToolStore;
}

/** A pause this long ends a number; until then nobody is told that it is wrong. */
const pauseMs = 900;

/** Which fields are wrong by now: the one being typed gets a moment. */
function useSettled(problems: readonly Problem[]): {
  readonly told: readonly Problem[];
  readonly onType: (at: string) => void;
  readonly onLeave: () => void;
} {
  const [typing, setTyping] = useState('');
  const timer = useRef(0);
  useEffect(() => () => clearTimeout(timer.current), []);
  return {
    told: problems.filter(({ at }) => at !== typing),
    onType: (at) => {
      clearTimeout(timer.current);
      setTyping(at);
      timer.current = window.setTimeout(() => setTyping(''), pauseMs);
    },
    onLeave: () => {
      clearTimeout(timer.current);
      setTyping('');
    },
  };
}

function Waiting({ mine, theirs }: { readonly mine: RanSide; readonly theirs: RanSide | null }) {
  const problems = [...mine.problems, ...(theirs?.problems ?? [])];
  return (
    <div class="waiting">
      <p>
        {problems.length === 1 ? 'One answer needs mending' : `${problems.length} answers need mending`}; the result comes back as soon as it can be
        computed.
      </p>
      <ul>
        {problems.slice(0, 4).map(({ at, say }) => (
          <li key={at}>{say}</li>
        ))}
      </ul>
    </div>
  );
}

/** Form and results of ANY calculator. */
export function CalculatorForm(props: CalculatorFormProps) {
  const { calculator, id, open, onChange, address, onSystem, Picture, tools, store, records, keepRecord } = props;
  const [form, setForm] = useState<Form>(() => ({ this: startTexts(calculator.inputs), that: null }));
  const [system, setSystem] = useState<UnitSystem>('us');
  const [notices, setNotices] = useState<readonly string[]>([]);
  // What only works with a script is switched on after the first render, which must equal the built page attribute by attribute.
  const [isLive, setLive] = useState(false);
  useLayoutEffect(() => {
    setLive(true);
    const opening = open?.();
    if (!opening) return;
    setForm(opening.form);
    setSystem(opening.system);
    setNotices(opening.notices);
  }, []);
  const thatTexts = useMemo(() => otherTexts(calculator, form), [form]);
  const mine = useMemo(() => runSide(calculator, form.this, system), [form.this, system]);
  const theirs = useMemo(() => thatTexts && runSide(calculator, thatTexts, system), [thatTexts, system]);
  const link = useMemo(() => toLink(calculator, form), [form]);
  useLayoutEffect(() => {
    onChange?.({ link, form, system, outcome: mine.outcome, other: theirs?.outcome ?? null });
  }, [form, system]);
  const titles = sideTitles(calculator, form.this, thatTexts, system);
  const thisSide = useSettled(mine.problems);
  const thatSide = useSettled(theirs?.problems ?? []);
  const putThis = (texts: Texts, at: string) => {
    thisSide.onType(at);
    setForm((now) => ({ ...now, this: texts }));
  };
  const switchSystem = (to: UnitSystem) => {
    setForm((now) => ({
      this: changeSystem(calculator.inputs, now.this, system, to),
      that: now.that && changeSystem(calculator.inputs, now.that, system, to),
    }));
    setSystem(to);
    onSystem?.(to);
  };
  const common = { calculator, system };
  const asks = {
    ...common,
    tools: tools && { draw: tools, store: isLive ? store : undefined },
    records: records && { draw: records, keep: isLive ? keepRecord : undefined },
  };
  const { outcome } = mine;
  const other = theirs?.outcome ?? null;
  const isComputed = outcome !== null && (theirs === null || other !== null);
  const lead = outcome && leadOf(calculator, outcome);
  const isManagement = (input: { readonly belongsTo: string }) => input.belongsTo === 'management';
  const hasConventions = Object.values(calculator.inputs).some(
    (input) => input.kind === 'choice' && input.convention === true && !isManagement(input),
  );
  const isConvention = (input: object) => 'convention' in input && input.convention === true;
  const mayCompare = canCompare(calculator.inputs);
  // A table with columns of both stands whole, among the place's, until there is another management to set beside it.
  const sharedRows = thatTexts ? 'apart' : 'whole';
  const asksManagement = Object.values(calculator.inputs).some(
    (input: Input) => isShown(input, form.this) && (input.kind === 'rows' ? !sharesRows(input) : isManagement(input)),
  );
  return (
    <form class="asks-and-answers" onSubmit={(event) => event.preventDefault()} noValidate>
      <div class="asks">
        <fieldset class="system">
          <legend class="unseen">Units</legend>
          {(
            [
              ['us', 'Inches, acres, pounds'],
              ['si', 'Metric'],
            ] as const
          ).map(([key, label]) => (
            <label key={key}>
              <input
                type="radio"
                name={`${id}-system`}
                id={`${id}-system-${key}`}
                autocomplete="off"
                checked={system === key}
                onChange={() => switchSystem(key)}
              />
              <span>{label}</span>
            </label>
          ))}
        </fieldset>
        {notices.length > 0 && (
          <div class="notices" role="status">
            {notices.map((notice) => (
              <p key={notice}>{notice}</p>
            ))}
          </div>
        )}
        <section class="asked-place">
          <h2 class="asks-title">The place</h2>
          <Side
            {...asks}
            id={id}
            texts={form.this}
            problems={thisSide.told}
            canAddRows
            sharedRows={sharedRows}
            wants={(input) => !isManagement(input) && !isConvention(input)}
            onTexts={putThis}
            onLeave={thisSide.onLeave}
          />
        </section>
        {mayCompare && (
          <section class="asked-management">
            {(asksManagement || thatTexts) && <h2 class="asks-title">The management</h2>}
            <div class={thatTexts ? 'two-sides' : ''}>
              <div class="one-side is-this">
                {thatTexts && <h3 class="side-title">This{titles[0] && `: ${titles[0]}`}</h3>}
                <Side
                  {...asks}
                  id={id}
                  texts={form.this}
                  problems={thisSide.told}
                  canAddRows={false}
                  sharedRows={thatTexts ? 'apart' : 'none'}
                  wants={(input) => isManagement(input)}
                  onTexts={putThis}
                  onLeave={thisSide.onLeave}
                />
              </div>
              {thatTexts && (
                <div class="one-side is-that">
                  <h3 class="side-title">That{titles[1] && `: ${titles[1]}`}</h3>
                  <Side
                    {...asks}
                    id={`${id}-that`}
                    texts={thatTexts}
                    problems={thatSide.told}
                    of="Other management"
                    canAddRows={false}
                    wants={(input) => isManagement(input)}
                    onTexts={(texts, at) => {
                      thatSide.onType(at);
                      setForm((now) => ({ ...now, that: texts }));
                    }}
                    onLeave={thatSide.onLeave}
                  />
                </div>
              )}
            </div>
            <button
              type="button"
              class="compare"
              aria-pressed={form.that !== null}
              onClick={() => setForm((now) => ({ ...now, that: now.that ? null : now.this }))}
            >
              {form.that ? 'Stop comparing' : 'Compare with other management'}
            </button>
          </section>
        )}
        {hasConventions && (
          <section class="asked-conventions">
            <h2 class="asks-title">Ways of counting</h2>
            <Side
              {...asks}
              id={id}
              texts={form.this}
              problems={thisSide.told}
              canAddRows={false}
              wants={(input) => isConvention(input) && !isManagement(input)}
              onTexts={putThis}
              onLeave={thisSide.onLeave}
            />
          </section>
        )}
      </div>
      {/* On a phone this line stays in view while somebody types above it. The answer itself follows, so listeners skip this one. */}
      <p class="in-view" aria-hidden="true">
        {isComputed && lead ? (
          <>
            <span class="is-this">
              <Large {...common} outcome={outcome} of={lead.of} />
            </span>
            {other && (
              <span class="is-that">
                <Large {...common} outcome={other} of={lead.of} />
              </span>
            )}
            <span class="in-view-name">{calculator.quantities[lead.of]?.label}</span>
          </>
        ) : (
          <span class="in-view-name">Waiting for an answer above</span>
        )}
      </p>
      <div class="answers">
        <div aria-live="polite">
          {isComputed ? (
            <>
              {[...new Map([...outcome.cautions, ...(other?.cautions ?? [])].map((caution) => [caution.say, caution])).values()].map((caution) => (
                <p class="caution" key={caution.say}>
                  {caution.say}
                </p>
              ))}
              <Answers {...common} outcome={outcome} other={other} titles={titles} />
              <p class="note-line">{outcome.note}</p>
              {other && <p class="note-line is-that">{other.note}</p>}
              {calculator.weighsOnPeople && <ShortHelp />}
            </>
          ) : (
            <Waiting mine={mine} theirs={theirs} />
          )}
        </div>
        {isComputed && (
          <>
            {calculator.picture && Picture && (
              <Picture {...common} picture={calculator.picture} outcome={outcome} other={other} titles={titles} id={`${id}-picture`} />
            )}
            <ResultsTable {...common} outcome={outcome} other={other} titles={titles} />
            <RowsResults {...common} outcome={outcome} other={other} titles={titles} />
            <Conventions {...common} texts={form.this} outcome={outcome} />
            <Actions calculator={calculator} link={link} outcome={outcome} other={other} {...(isLive && address !== undefined ? { address } : {})} />
          </>
        )}
      </div>
    </form>
  );
}
