import { render } from 'preact';
import { useState } from 'preact/hooks';
import type { Reach } from '../../../calculators/ui/formProps.ts';
import { loadAgain } from '../../site/folder.ts';
import type { AtLink, AtPlace, Choice } from './types.ts';

interface HeadProps {
  readonly id: string;
  readonly at: AtPlace;
  /** The figures are those of somebody's link: nothing of the place goes in before it is asked for. */
  readonly link: AtLink | undefined;
  readonly reach: () => Reach | undefined;
}

/** Which place is open, its pastures, and what a link asks first. */
function PlaceHead({ id, at, link: opened, reach }: HeadProps) {
  const [link, setLink] = useState(opened);
  const [chosen, setChosen] = useState(at.chosen());
  const [said, setSaid] = useState(at.said());
  const { place, places, choices, placePage } = at;
  const own = places.filter((each) => each.id !== place.id);
  const choose = (ids: readonly string[]) => {
    const way = reach();
    if (!way) return;
    setChosen(ids);
    at.choose(ids, way).then(
      () => setSaid(at.said()),
      () => {
        setChosen(at.chosen());
        setSaid([`This could not be loaded. ${loadAgain()}`]);
      },
    );
  };
  const leaveLink = () => {
    setLink(undefined);
    setSaid(at.said());
  };
  const tap = ({ of, isMany }: Choice, id: string) => {
    const others = isMany ? chosen : chosen.filter((each) => !of.some((one) => one.id === each));
    choose(chosen.includes(id) ? others.filter((each) => each !== id) : [...others, id]);
  };
  return (
    <>
      <p class="place-open">
        {own.length === 0 ? (
          <a href={placePage}>{place.name}</a>
        ) : (
          <>
            <label for={`${id}-place`}>Place</label>{' '}
            <select id={`${id}-place`} autocomplete="off" onChange={(event) => at.switchTo(event.currentTarget.value)}>
              {places.map((each) => (
                <option key={each.id} value={each.id} selected={each.id === place.id}>
                  {each.name}
                </option>
              ))}
            </select>{' '}
            <a href={placePage}>My place</a>
          </>
        )}
      </p>
      {link ? (
        <link.Bar link={link} reach={reach} onUse={leaveLink} />
      ) : (
        choices.map((choice) => (
          <fieldset class="place-pastures" key={choice.says}>
            <legend class="unseen">{choice.says}</legend>
            {choice.of.map(({ id: each, name }) => (
              <button type="button" key={each} aria-pressed={chosen.includes(each)} onClick={() => tap(choice, each)}>
                {name}
              </button>
            ))}
          </fieldset>
        ))
      )}
      {!link && said.length > 0 && (
        <ul class="place-said">
          {said.map((each) => (
            <li key={each}>{each}</li>
          ))}
        </ul>
      )}
    </>
  );
}

/** Above a form, before it is seen. Gives what draws it anew. */
export function drawPlaceHead(root: Element, props: HeadProps): () => void {
  const box = document.createElement('div');
  box.className = 'at-place';
  root.before(box);
  let times = 0;
  const draw = (): void => {
    render(<PlaceHead key={times} {...props} link={times === 0 ? props.link : undefined} />, box);
    times += 1;
  };
  draw();
  return draw;
}
