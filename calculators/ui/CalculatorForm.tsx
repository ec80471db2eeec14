import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Calculator, Outcome } from '../kit/define.ts';
import type { Led } from '../kit/leads.ts';
import { toLink } from '../kit/link.ts';
import { picturesOf } from '../kit/pictures.ts';
import { askedNow, drawnTogether, inputNameOf } from '../kit/screen.ts';
import { canCompare, type Form, isShown, type Texts } from '../kit/state.ts';
import type { UnitSystem } from '../units/units.ts';
import { Actions } from './Actions.tsx';
import { AnswerBlock, figureFor } from './AnswerBlock.tsx';
import { Cautions } from './Cautions.tsx';
import { Conventions } from './Conventions.tsx';
import { Differs } from './Differs.tsx';
import { Fields } from './Fields.tsx';
import { type Opening, ownOf, type SideNames, useHeld, useLater, useSettled } from './formState.ts';
import { Group } from './Groups.tsx';
import { InView } from './InView.tsx';
import { Leads } from './Leads.tsx';
import type { DrawPicture } from './pictures/loadPicture.tsx';
import type { PlaceMarks, SideProps, Told as ToldOf, Tools, Whose } from './props.ts';
import type { Records } from './RecordField.tsx';
import { ResultsList } from './ResultsList.tsx';
import { RowsResults } from './RowsResults.tsx';
import { ShortHelp } from './ShortHelp.tsx';
import { otherTexts, runSide, sideTitles } from './sides.ts';
import { stampOf } from './stamp.ts';
import type { ToolStore } from './tools/keptTool.ts';
import { isTouched, type Touched } from './touched.ts';
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
  readonly place: PlaceMarks | undefined;
  readonly names: SideNames;
  readonly outcome: Outcome | null;
  readonly other: Outcome | null;
}
export interface Reach {
  /** Puts texts into fields, whether they stand open or not. */
  readonly fill: (texts: Texts) => void;
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
  readonly onKeep?: ((below: Element) => void) | undefined;
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
}

/** Pictures, tables and the link follow the answer at the end of a run of keys. */
const pictureMs = 60;

/** Form and results of ANY calculator: the answer first. */
export function CalculatorForm(props: CalculatorFormProps) {
  const { calculator, id, open, onChange, address, leadAddress, onPrint, onSystem, onLive, Picture, tools, store, records, keepRecord } = props;
  const { inputs, layout } = calculator;
  const [held, act] = useHeld(calculator);
  const { form, system, touched, blank, linked, today, placed, place, names } = held;
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
  const thatTexts = useMemo(() => otherTexts(calculator, form), [form]);
  const mine = useMemo(() => runSide(calculator, form.this, system), [form.this, system]);
  const theirs = useMemo(() => thatTexts && runSide(calculator, thatTexts, system), [thatTexts, system]);
  const isComputed = mine.outcome !== null && (theirs === null || theirs.outcome !== null);
  const outcome = isComputed ? mine.outcome : null;
  const other = isComputed ? (theirs?.outcome ?? null) : null;
  const problems = [...mine.problems, ...(theirs?.problems ?? []).filter(({ at }) => !mine.problems.some((each) => each.at === at))];
  const differing = useMemo(() => sideTitles(calculator, form.this, thatTexts, system), [form, system]);
  const titles = [names[0] || 'This', names[1] || 'That'] as const;
  // What is told a little behind the answer belongs together.
  const now = useMemo(
    () => ({ form, system, touched, linked, blank, today, placed, place, names, outcome, other, titles, differing }),
    [form, system, touched, place, names, outcome, other],
  );
  const newest = useRef(now);
  newest.current = now;
  const told = useLater(now, pictureMs);
  const link = useMemo(() => toLink(calculator, told.form), [told.form]);
  useLayoutEffect(() => {
    onChange?.({ ...told, link });
  }, [told]);
  const thisSide = useSettled(mine.problems.filter(({ at }) => !blank.has(at)));
  const thatSide = useSettled(theirs?.problems ?? []);
  const whose =
    (prefix: string) =>
    (path: string): ToldOf | undefined =>
      blank.has(path)
        ? undefined
        : (prefix === '' && place?.toldAt(path, form.this, system, thatTexts ? act.putBoth : act.putThis)) || toldWithout(prefix, path);
  const toldWithout = (prefix: string, path: string): Whose =>
    prefix === '' && placed.has(path)
      ? 'from your place'
      : isTouched(touched, `${prefix}${path}`)
        ? 'yours'
        : isTouched(linked, path)
          ? 'from the link'
          : (today.get(path) ?? 'example');
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
  const unlike = thatTexts
    ? Object.keys(inputs).filter(
        (key) =>
          held.differs.includes(key) || (isShown(inputs[key] ?? {}, form.this) && JSON.stringify(form.this[key]) !== JSON.stringify(thatTexts[key])),
      )
    : [];
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
          stamp={stamp}
          action={action}
          waiting={<Waiting id={id} inputs={inputs} problems={problems} isBlank={(at) => blank.has(at)} />}
        />
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
        {canCompare(inputs) && (
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
      <InView answer={answer} figure={outcome ? figureFor(calculator, outcome, other, system) : undefined} stamp={stamp} />
      <Below
        told={told}
        calculator={calculator}
        link={link}
        id={id}
        Picture={Picture}
        {...(isLive && address !== undefined ? { address } : {})}
        {...(isLive && leadAddress !== undefined ? { leadAddress } : {})}
        {...(onPrint === undefined ? {} : { onPrint })}
        onKeep={props.onKeep}
      />
    </form>
  );
}

interface Told {
  readonly form: Form;
  readonly place: PlaceMarks | undefined;
  readonly system: UnitSystem;
  readonly outcome: Outcome | null;
  readonly other: Outcome | null;
  readonly titles: readonly [string, string];
  readonly differing: readonly [string, string];
}

/** A face runs from edge to edge; words and plots keep the margins of the text. */
const plotInsetPx = 30;
const widthOf = (box: RefObject<HTMLElement>): number | undefined => box.current?.clientWidth;
/** The width that a picture gets, once the page knows it. */
function useWidth(box: RefObject<HTMLElement>): number | undefined {
  const [width, setWidth] = useState<number | undefined>(undefined);
  useEffect(() => {
    if (!box.current) return undefined;
    // While paper is printed the page has no width at all.
    const watch = new ResizeObserver(() => setWidth((before) => widthOf(box) || before));
    watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  return width;
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

interface PicturesProps {
  readonly told: Told;
  readonly calculator: Calculator;
  readonly id: string;
  readonly Picture: DrawPicture | undefined;
}
/** The first picture under the answer, the others under all results. */
function Pictures({ told, calculator, id, Picture, places }: PicturesProps & { readonly places: readonly [from: number, to?: number] }) {
  const box = useRef<HTMLDivElement>(null);
  const widthPx = useWidth(box);
  const { outcome, other, system, titles, differing } = told;
  return (
    <div class="picture-box" ref={box}>
      {outcome &&
        Picture &&
        picturesOf(calculator, outcome.values)
          .slice(...places)
          .map((picture, place) => (
            <Picture
              key={place}
              calculator={calculator}
              system={system}
              picture={picture}
              outcome={outcome}
              other={other}
              titles={[titles[0] === 'This' ? differing[0] : titles[0], titles[1] === 'That' ? differing[1] : titles[1]]}
              id={`${id}-picture${places[0] + place || ''}`}
              {...(widthPx === undefined ? {} : { widthPx: picture.kind === 'face' ? widthPx : widthPx - plotInsetPx })}
            />
          ))}
    </div>
  );
}

/** The picture and the note, which may come a moment after the figure. */
function LaterPart(props: PicturesProps) {
  const { told, calculator } = props;
  const { outcome, other } = told;
  return useMemo(
    () => (
      <>
        <Pictures {...props} places={[0, 1]} />
        {outcome && (other ? <BothNotes calculator={calculator} told={told} /> : <p class="note">{outcome.note}</p>)}
        {outcome && calculator.weighsOnPeople && <ShortHelp />}
      </>
    ),
    [told],
  );
}

/** What either side comes to, each in the words of its own note. */
function BothNotes({ told: { outcome, other, titles } }: { readonly calculator: Calculator; readonly told: Told }) {
  if (outcome?.note === other?.note) return <p class="note">{outcome?.note}</p>;
  return (
    <>
      <p class="note">
        <b class="word-this">{titles[0]}:</b> {outcome?.note}
      </p>
      <p class="note">
        <b class="word-that">{titles[1]}:</b> {other?.note}
      </p>
    </>
  );
}

/** All results, tables, what to take along. */
function Below({
  link,
  address,
  leadAddress,
  onPrint,
  onKeep,
  ...pictured
}: PicturesProps & {
  readonly link: string;
  readonly address?: (link: string) => string;
  readonly leadAddress?: (led: Led) => string;
  readonly onPrint?: () => void;
  readonly onKeep: CalculatorFormProps['onKeep'];
}) {
  const { told, calculator } = pictured;
  const { outcome, other, system, titles, form } = told;
  return useMemo(() => {
    if (!outcome) return null;
    const sides = { calculator, outcome, other, titles, system };
    return (
      <div class="below">
        <section class="results">
          <h2>All results</h2>
          <ResultsList {...sides} />
          <Conventions calculator={calculator} system={system} texts={form.this} outcome={outcome} />
        </section>
        {outcome.leads && leadAddress && <Leads leads={outcome.leads} addressOf={leadAddress} />}
        {calculator.morePictures.length > 0 && <Pictures {...pictured} places={[1]} />}
        <RowsResults {...sides} />
        <section class="take">
          <h2>Take it with you</h2>
          <Actions
            calculator={calculator}
            link={link}
            outcome={outcome}
            other={other}
            titles={titles}
            heading={told.place?.title}
            onKeep={onKeep}
            {...(address === undefined ? {} : { address })}
            {...(onPrint === undefined ? {} : { onPrint })}
          />
        </section>
      </div>
    );
  }, [told, link, address === undefined]);
}
