import type { FunctionComponent, RefObject } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Calculator, Outcome } from '../kit/define.ts';
import type { Led } from '../kit/leads.ts';
import { toLink } from '../kit/link.ts';
import { askedNow, drawnTogether, inputNameOf } from '../kit/screen.ts';
import { canCompare, type Form, isShown, type Texts } from '../kit/state.ts';
import type { UnitSystem } from '../units/units.ts';
import type { OnKeep } from './Actions.tsx';
import { AnswerBlock, figureFor } from './AnswerBlock.tsx';
import { Below } from './Below.tsx';
import { Cautions } from './Cautions.tsx';
import { Differs } from './Differs.tsx';
import { Fields } from './Fields.tsx';
import { nobody, type Opening, ownOf, type SideNames, useHeld, useLater, useSame, useSettled } from './formState.ts';
import { Group } from './Groups.tsx';
import { InView } from './InView.tsx';
import { LaterPart } from './LaterPart.tsx';
import type { DrawPicture } from './pictures/loadPicture.tsx';
import type { AloneProps, PlaceMarks, SideProps, Told as ToldOf, Tools, Whose } from './props.ts';
import type { Records } from './RecordField.tsx';
import { otherTexts, type RanSide, sideTitles, type UseSide, useSide } from './sides.ts';
import { stampOf } from './stamp.ts';
import type { ToolStore } from './tools/keptTool.ts';
import { isTouched, type Touched, touchedBy } from './touched.ts';
import { Waiting } from './Waiting.tsx';

export interface Change {
  readonly link: string;
  readonly form: Form;
  readonly system: UnitSystem;
  readonly touched: Touched;
  readonly linked: Touched;
  readonly blank: Touched;
  readonly today: ReadonlyMap<string, Whose>;
  readonly placed: Touched;
  readonly filled?: string | undefined;
  readonly place: PlaceMarks | undefined;
  readonly names: SideNames;
  readonly outcome: Outcome | null;
  readonly other: Outcome | null;
}
export interface Reach {
  /** Puts texts into fields, whether they stand open or not, and says of these paths from whose values. */
  readonly fill: (texts: Texts, paths: readonly string[], filled: string) => void;
  readonly open: (opening: Opening) => void;
  /** What `onChange` is told a little later: for when there is no later. */
  readonly now: () => Change;
}
export interface CalculatorFormProps {
  readonly calculator: Calculator;
  /** Begins every id on the page that is this form's. */
  readonly id: string;
  /** Applied before the first paint. The first render is always the default, for it must equal the built page. */
  readonly open?: () => Opening | null;
  readonly onChange?: (change: Change) => void;
  /** The whole address of a link, for copying. */
  readonly address?: (link: string) => string;
  /** The whole address of what a result leads to. */
  readonly leadAddress?: (led: Led) => string;
  readonly onPrint?: () => void;
  readonly onSystem?: (system: UnitSystem) => void;
  /** Offers to keep what stands in the form, in a box below the result. */
  readonly onKeep?: OnKeep | undefined;
  /** Before a note: whose figures these are, with what the place that is open says. */
  readonly headingOf?: (placeTitle: string | undefined) => string | undefined;
  /** Hands out what can be done to the form from outside. */
  readonly onLive?: (reach: Reach) => void;
  /** Draws a record, and keeps it, for a definition that asks for one. */
  readonly records?: Records['draw'];
  readonly keepRecord?: Exclude<Records['keep'], undefined>;
  /** Draws the picture that a definition has, if it has one. */
  readonly Picture?: DrawPicture | undefined;
  /** Draws the tools that a definition names. */
  readonly tools?: Tools['draw'];
  /** Where they keep their state. */
  readonly store?: ToolStore;
  /** Computes a side where that takes long. */
  readonly useRan?: UseSide | undefined;
  /** Runs what differs, or what is unsure, one at a time. */
  readonly Alone?: FunctionComponent<AloneProps> | undefined;
}
const nothing: RanSide = { outcome: null, problems: [] };

/** The picture follows the answer at the end of a run of keys; tables, the working and the link a little behind it. */
const pictureMs = 30;
const restMs = 90;

/** Form and results of ANY calculator: the answer first. */
export function CalculatorForm(props: CalculatorFormProps) {
  const {
    calculator,
    id,
    open,
    onChange,
    address,
    leadAddress,
    onPrint,
    onSystem,
    onLive,
    Picture,
    tools,
    store,
    records,
    keepRecord,
    useRan = useSide,
    Alone,
  } = props;
  const { inputs, layout } = calculator;
  const [held, act] = useHeld(calculator);
  const { form, system, touched, blank, linked, today, placed, filled, place, names } = held;
  const [notices, setNotices] = useState<readonly string[]>([]);
  // What only works with a script is switched on after the first render, which must equal the built page attribute by attribute.
  const [isLive, setLive] = useState(false);
  useLayoutEffect(() => {
    setLive(true);
    const take = (opening: Opening) => {
      act.open(opening);
      setNotices(opening.notices);
    };
    onLive?.({ fill: act.fill, open: take, now: () => ({ ...newest.current, link: toLink(calculator, newest.current.form) }) });
    const opening = open?.();
    if (opening) take(opening);
  }, []);
  const thatTexts = useSame(useMemo(() => otherTexts(calculator, form), [form]));
  const mine = useRan(calculator, form.this, system) ?? nothing;
  const theirs = useRan(calculator, thatTexts, system);
  const isComputed = mine.outcome !== null && (theirs === null || theirs.outcome !== null);
  const outcome = isComputed ? mine.outcome : null;
  const other = isComputed ? (theirs?.outcome ?? null) : null;
  const problems = [...mine.problems, ...(theirs?.problems ?? []).filter(({ at }) => !mine.problems.some((each) => each.at === at))];
  const differing = useMemo(() => sideTitles(calculator, form.this, thatTexts, system), [form, system]);
  const figure = useMemo(() => (outcome ? figureFor(calculator, outcome, other, system) : undefined), [outcome, other, system]);
  const titles = [names[0] || 'This', names[1] || 'That'] as const;
  // What is told a little behind the answer belongs together.
  const now = useMemo(
    () => ({ form, system, touched, linked, blank, today, placed, filled, place, names, outcome, other, titles, differing }),
    [form, system, touched, place, names, outcome, other],
  );
  const newest = useRef(now);
  newest.current = now;
  const told = useLater(now, pictureMs);
  const settled = useLater(told, restMs);
  const link = useMemo(() => toLink(calculator, settled.form), [settled.form]);
  useLayoutEffect(() => {
    onChange?.({ ...settled, link });
  }, [settled]);
  const thisSide = useSettled(mine.problems.filter(({ at }) => !blank.has(at)));
  const thatSide = useSettled(theirs?.problems ?? []);
  const whose =
    (prefix: string) =>
    (path: string): ToldOf | undefined =>
      blank.has(path)
        ? undefined
        : (prefix === '' && place?.toldAt(path, form.this, system, thatTexts ? act.putBoth : act.putThis)) || toldWithout(prefix, path);
  const toldWithout = (prefix: string, path: string): ToldOf =>
    prefix === '' && placed.has(path) ? (
      filled ? (
        <>from {filled}</>
      ) : (
        'from your place'
      )
    ) : isTouched(touched, `${prefix}${path}`) ? (
      'yours'
    ) : isTouched(linked, path) ? (
      'from the link'
    ) : (
      (today.get(path) ?? 'example')
    );
  const common = { calculator, system, tools: tools && { draw: tools, store: isLive ? store : undefined } };
  const side: Omit<SideProps, 'keys'> = {
    ...common,
    id,
    texts: form.this,
    problems: thisSide.told,
    whoseOf: whose(''),
    canAddRows: true,
    records: records && { draw: records, keep: isLive ? keepRecord : undefined },
    onTexts: (texts, at) => {
      thisSide.onType(at);
      if (thatTexts) act.putBoth(texts);
      else act.putThis(texts);
    },
    onLeave: thisSide.onLeave,
  };
  const asked = askedNow(inputs, layout, form.this);
  const unlike = useMemo(() => {
    const unequal = new Set(thatTexts ? [...touchedBy(nobody, form.this, thatTexts)].map(inputNameOf) : []);
    return thatTexts
      ? Object.keys(inputs).filter((key) => held.differs.includes(key) || (isShown(inputs[key] ?? {}, form.this) && unequal.has(key)))
      : [];
  }, [form.this, thatTexts, held.differs]);
  const apart = drawnTogether(inputs, unlike);
  const stamp = stampOf(calculator, form.this, { touched: ownOf(held), linked, waiting: problems.length, unlike });
  const groups = thatTexts
    ? [
        {
          title: 'The same for both',
          inputs: [...new Set([...asked.map(inputNameOf), ...Object.keys(inputs)])].filter((key) => !apart.flat().includes(key)),
        },
      ]
    : layout.groups;
  const isExample = stamp.is === 'example' || stamp.is === 'link';
  const answer = useRef<HTMLDivElement>(null);
  const isTall = useTall(answer);
  const action = isLive && (
    <button type="button" class="quiet" hidden={!isExample && blank.size === 0} onClick={isExample ? act.clear : act.exampleAgain}>
      {isExample ? 'Clear it' : 'Example again'}
      <span class="unseen">{isExample ? ' for my own numbers' : ', in place of the empty form'}</span>
    </button>
  );
  return (
    <form class={outcome ? 'screen' : 'screen is-waiting'} onSubmit={(event) => event.preventDefault()} noValidate>
      <div class="screen-cautions" aria-live="polite">
        <Cautions outcome={outcome} other={other} titles={titles} />
      </div>
      <div class={isTall ? 'stay is-tall' : 'stay'} ref={answer}>
        {notices.length > 0 && (
          <div class="notices" role="status">
            {notices.map((notice) => (
              <p key={notice}>{notice}</p>
            ))}
          </div>
        )}
        <AnswerBlock
          {...common}
          outcome={outcome}
          other={other}
          figure={figure}
          stamp={stamp}
          action={action}
          waiting={<Waiting id={id} inputs={inputs} problems={problems} isBlank={(at) => blank.has(at)} />}
        />
        {mine.running ?? theirs?.running}
        <LaterPart told={told} calculator={calculator} id={id} Picture={Picture} />
      </div>
      <section class="asks">
        <h2 class="asks-title">{thatTexts ? 'What differs' : 'Put your own in'}</h2>
        {thatTexts ? (
          <Differs
            mine={{
              ...side,
              onTexts: (texts, at) => {
                thisSide.onType(at);
                act.putThis(texts);
              },
            }}
            theirs={{
              ...side,
              id: `${id}-that`,
              texts: thatTexts,
              problems: thatSide.told,
              whoseOf: whose('that.'),
              of: 'That side',
              onTexts: (texts, at) => {
                thatSide.onType(at);
                act.putThat(texts);
              },
              onLeave: thatSide.onLeave,
            }}
            apart={apart}
            names={names}
            onNames={act.name}
            onLetDiffer={act.letDiffer}
          />
        ) : (
          drawnTogether(inputs, asked).map((keys) => (
            <div class="ask" key={keys[0]}>
              <Fields {...side} keys={keys} />
            </div>
          ))
        )}
        {groups.map((group) => (
          <Group
            key={group.title}
            {...side}
            group={thatTexts ? group : { ...group, inputs: group.inputs.filter((key) => !asked.includes(key)) }}
            wantsColumn={(key, name) => !asked.includes(`${key}.${name}`)}
            touched={touched}
            origin={linked.size > 0 ? 'link' : 'example'}
          />
        ))}
        {(thatTexts !== null || canCompare(inputs, form.this)) && (
          <button type="button" class={thatTexts ? 'wide-button is-quiet' : 'wide-button'} disabled={!isLive} onClick={act.compare}>
            {thatTexts ? 'Stop comparing' : 'Set another management beside it'}
          </button>
        )}
        <button
          type="button"
          class="quiet units"
          disabled={!isLive}
          onClick={() => {
            const to = system === 'us' ? 'si' : 'us';
            act.switchSystem(to);
            onSystem?.(to);
          }}
        >
          {system === 'us' ? 'In metric' : 'In inches, acres and pounds'}
        </button>
      </section>
      <InView answer={answer} figure={figure} stamp={stamp} />
      {Alone && outcome && <Alone calculator={calculator} mine={form.this} theirs={thatTexts} system={system} />}
      <Below
        told={settled}
        calculator={calculator}
        link={link}
        id={id}
        Picture={Picture}
        {...(isLive && address !== undefined ? { address } : {})}
        {...(isLive && leadAddress !== undefined ? { leadAddress } : {})}
        {...(onPrint === undefined ? {} : { onPrint })}
        onKeep={props.onKeep}
        headingOf={props.headingOf}
      />
    </form>
  );
}

/** Does it reach past the glass? Then it does not stay in view beside the questions, where its end would never be seen. */
function useTall(box: RefObject<HTMLElement>): boolean {
  const [isTall, setTall] = useState(false);
  useEffect(() => {
    if (!box.current) return undefined;
    const watch = new ResizeObserver(([seen]) => seen && setTall(seen.contentRect.height > innerHeight));
    watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  return isTall;
}
