import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { toLink } from '../kit/link.ts';
import { askedNow, drawnTogether, inputNameOf } from '../kit/screen.ts';
import { canCompare } from '../kit/state.ts';
import { figureAlone } from './Answer.tsx';
import { AnswerBlock } from './AnswerBlock.tsx';
import { Cautions } from './Cautions.tsx';
import { Fields } from './Fields.tsx';
import type { CalculatorFormProps } from './formProps.ts';
import { type Opening, ownOf, useHeld, useSame, useSettled } from './formState.ts';
import { Group } from './Groups.tsx';
import { InView } from './InView.tsx';
import type { Told } from './LaterPart.tsx';
import { useParts } from './parts.ts';
import type { SideProps, Told as ToldOf } from './props.ts';
import { otherTexts, type RanSide, useSide } from './sides.ts';
import { stampOf } from './stamp.ts';
import { useStayPut } from './stayPut.ts';
import { TellLater } from './TellLater.tsx';
import { isTouched } from './touched.ts';
import { UnitsSwitch } from './UnitsSwitch.tsx';
import { useTall } from './useTall.ts';
import { Waiting } from './Waiting.tsx';

/** What is told of two managements, or of one. */
type Stands = Pick<Told, 'outcome' | 'other'> & { readonly differing: Told['saying'] };
const noTitles: readonly [string, string] = ['', ''];
const noComparing = 'What compares two managements has not come. Try again where there is signal.';
const nothing: RanSide = { outcome: null, problems: [] };

/** Form and results of ANY calculator: the answer first. */
export function CalculatorForm(props: CalculatorFormProps) {
  const { calculator, id, begun, open, follow, onSystem, onLive, parts = {}, built, store, records, keepRecord, useRan = useSide, Alone } = props;
  const { inputs, layout } = calculator;
  const [held, act] = useHeld(calculator, begun, follow);
  const { form, system, notices, touched, blank, linked, today, placed, filled, place, names } = held;
  const { tables, two, tools, withAll } = useParts(parts, inputs);
  const tellMissing = () => act.tell(noComparing);
  const take = (opening: Opening) => {
    const put = () => act.open(opening);
    if (opening.form.that) withAll(put, tellMissing);
    else put();
  };
  // What only works with a script is switched on after the first render, which must equal the built page attribute by attribute; a moment behind it, with what
  // the form is opened with, and before anybody is told that it is live.
  const [isLive, setLive] = useState(false);
  useLayoutEffect(() => {
    onLive?.({
      fill: act.fill,
      open: take,
      now: () => ({ ...newest.current, link: toLink(calculator, newest.current.form) }),
      bringParts: () => withAll(() => undefined),
    });
    setTimeout(() => {
      setLive(true);
      const opening = open?.();
      if (opening) take(opening);
    });
  }, []);
  const thatTexts = useSame(useMemo(() => otherTexts(calculator, form), [form]));
  const mine = useRan(calculator, form.this, system) ?? nothing;
  const theirs = useRan(calculator, thatTexts, system);
  const problems = [...mine.problems, ...(theirs?.problems ?? []).filter(({ at }) => !mine.problems.some((each) => each.at === at))];
  const differingNow = useMemo(() => two?.sideTitles(calculator, form.this, thatTexts, system) ?? noTitles, [form, system, two]);
  // Two answers belong together, and to the words that tell them apart: those before stand until all of the new ones are there.
  const stands = useRef<Stands>();
  const isBehind = theirs && problems.length === 0 && (mine.isEarlier ?? theirs.isEarlier);
  const whole = theirs?.outcome === null ? null : mine.outcome;
  if (!stands.current || !isBehind) stands.current = { outcome: whole, other: (whole && theirs?.outcome) ?? null, differing: differingNow };
  const { outcome, other, differing } = stands.current;
  const [figure, between, line = ''] = useMemo(() => {
    const told = outcome && { calculator, outcome, system };
    if (!told) return [];
    return other ? (two?.toldBetween({ ...told, other }) ?? []) : [figureAlone(told)];
  }, [outcome, other, system, two]);
  const titles = [names[0] || 'This', names[1] || 'That'] as const;
  const saying = other ? ([names[0] || differing[0] || 'This', names[1] || differing[1] || 'That'] as const) : noTitles;
  const asked = askedNow(inputs, layout, form.this);
  const unlike = useMemo(
    () => (thatTexts && two?.setApart(calculator, form.this, thatTexts, held.differs)) ?? [],
    [form.this, thatTexts, held.differs],
  );
  const apart = drawnTogether(inputs, unlike);
  const stamp = useMemo(() => {
    const own = ownOf(held);
    return stampOf(calculator, form.this, {
      touched: own,
      linked,
      waiting: problems.length,
      theirs: thatTexts ? two?.theirAnswers(calculator, thatTexts, unlike, own) : undefined,
    });
  }, [form.this, touched, placed, place, linked, problems.length, unlike]);
  // What is told a little behind the answer belongs together.
  const now = useMemo(
    () => ({ form, system, touched, linked, blank, today, placed, filled, place, names, outcome, other, titles, saying, between: line, stamp }),
    [form, system, stamp, touched, place, names, outcome, other, line],
  );
  const newest = useRef(now);
  newest.current = now;
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
    ) : prefix !== '' && isTouched(held.came, path) ? (
      'from this side'
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
    tables,
    records: records && { draw: records, keep: isLive ? keepRecord : undefined },
    onTexts: (texts, at) => {
      thisSide.onType(at);
      if (thatTexts) act.putBoth(texts);
      else act.putThis(texts);
    },
    onLeave: thisSide.onLeave,
  };
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
  useStayPut(outcome !== null);
  const action = isLive && (
    <button type="button" class="quiet" hidden={!isExample && blank.size === 0} onClick={isExample ? act.clear : act.exampleAgain}>
      {isExample ? 'Clear it' : 'Example again'}
      <span class="unseen">{isExample ? ' for my own numbers' : ', in place of the empty form'}</span>
    </button>
  );
  return (
    <form class={outcome ? 'screen' : 'screen is-waiting'} onSubmit={(event) => event.preventDefault()} noValidate>
      {/* Beside the questions the answer stays in view as far down as they go, and no farther. */}
      <div class="screen-top">
        <div class="screen-cautions">
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
            between={between}
            isBoth={other !== null}
            figure={figure}
            stamp={stamp}
            action={action}
            waiting={<Waiting id={id} inputs={inputs} problems={problems} isBlank={(at) => blank.has(at)} />}
          />
          {mine.running ?? theirs?.running}
          {/* In a browser this and what stands below stay as they were built until their own script has come. */}
          <div class="pictured">{built && <built.LaterPart told={now} calculator={calculator} id={id} Picture={built.Picture} />}</div>
        </div>
        <section class="asks">
          <h2 class="asks-title">{thatTexts ? 'What differs' : 'Put your own in'}</h2>
          {thatTexts && two ? (
            <two.Differs
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
              origin={group.inputs.some((key) => linked.has(key)) ? 'link' : 'example'}
              isWanting={problems.length > 0}
            />
          ))}
          {(thatTexts !== null || canCompare(inputs, form.this)) && (
            <button
              key="compare"
              type="button"
              class={thatTexts ? 'wide-button is-quiet' : 'wide-button'}
              disabled={!isLive}
              onClick={() => withAll(act.compare, tellMissing)}
            >
              {thatTexts ? 'Stop comparing' : 'Set another management beside it'}
            </button>
          )}
          <UnitsSwitch
            system={system}
            isOff={!isLive}
            onSystem={(to) => {
              act.switchSystem(to);
              onSystem?.(to);
            }}
          />
        </section>
        <InView answer={answer} figure={figure} stamp={stamp} />
      </div>
      <TellLater {...props} now={now} />
      {Alone && outcome && <Alone calculator={calculator} mine={form.this} theirs={thatTexts} system={system} />}
      <div class="below">
        {built && <built.Below told={now} calculator={calculator} link={toLink(calculator, form)} id={id} Picture={built.Picture} />}
      </div>
    </form>
  );
}
