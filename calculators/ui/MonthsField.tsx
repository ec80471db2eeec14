import type { MonthsInput } from '../kit/inputs.ts';
import { monthsIn } from '../kit/state.ts';
import { shortMonthName } from '../units/months.ts';
import { unitIn, units } from '../units/units.ts';
import { keptText, shownText } from './fieldText.ts';
import type { SideProps } from './props.ts';

/** Twelve small fields, January first. */
export function MonthsField({ name, input, ...side }: SideProps & { readonly name: string; readonly input: MonthsInput }) {
  const { id, texts, problems, system, onTexts, onLeave } = side;
  const list = monthsIn(texts[name]);
  const shown = unitIn(system, input.unit);
  return (
    <fieldset class="months" id={`${id}-${name}`}>
      <legend>
        {input.label} {units[shown].print !== '' && <span class="muted">({units[shown].words})</span>}
      </legend>
      {input.help && <small class="field-hint">{input.help}</small>}
      <div class="month-fields">
        {list.map((text, index) => {
          const at = `${name}.${index}`;
          const problem = problems.find((each) => each.at === at)?.say;
          const month = shortMonthName(index);
          return (
            <div class={problem ? 'month is-wrong' : 'month'} key={month}>
              <label for={`${id}-${name}-${index}`}>{month}</label>
              <input
                id={`${id}-${name}-${index}`}
                type="text"
                autocomplete="off"
                value={shownText(text, input.unit, system)}
                aria-invalid={problem ? true : undefined}
                aria-describedby={problem ? `${id}-${name}-${index}-problem` : undefined}
                onInput={(event) => {
                  const next = keptText(event.currentTarget.value, input.unit, system);
                  onTexts({ ...texts, [name]: list.map((each, place) => (place === index ? next : each)) }, at);
                }}
                onBlur={onLeave}
              />
              {problem && (
                <p class="problem" id={`${id}-${name}-${index}-problem`}>
                  {problem}
                </p>
              )}
            </div>
          );
        })}
      </div>
    </fieldset>
  );
}
