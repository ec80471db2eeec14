import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import stormRunoff from '../../calculators/catalog/storm-runoff/definition.ts';
import type { Cell } from '../../calculators/kit/inputs.ts';
import { Field } from '../../calculators/ui/Field.tsx';
import { toolSet } from '../../calculators/ui/tools/toolSet.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import kitchenSink from '../kit/kitchenSink.ts';

const draw = (cell: Cell, { problem, system = 'us' }: { readonly problem?: string; readonly system?: UnitSystem } = {}): string =>
  render(
    <Field id="f" cell={cell} text="" problem={problem} system={system} whose={undefined} tools={undefined} onText={() => {}} onLeave={() => {}} />,
  );
/** The field's description as it is put together: https://www.w3.org/TR/accname-1.2/, the texts of the elements that it names, in that order. */
function described(html: string): readonly string[] {
  const ids = /<(?:input|select|fieldset)[^>]* aria-describedby="([^"]*)"/.exec(html)?.[1]?.split(' ') ?? [];
  return ids.map((id) => new RegExp(` id="${id}"[^>]*>([^<]*)<`).exec(html)?.[1] ?? `${id} is missing`);
}
const cellOf = (inputs: typeof stormRunoff.inputs, name: string): Cell => {
  const input = inputs[name];
  if (!input || input.kind === 'rows' || input.kind === 'months' || input.kind === 'record') throw new RangeError(name);
  return input;
};

it('names at a watch the row whose time it takes, and has room to say that time', () => {
  const soak = cellOf(kitchenSink.inputs, 'soakMin');
  const html = render(<toolSet.FieldTool id="f" cell={soak} of="Ring 2" system="us" store={undefined} onText={() => {}} />);
  expect(html).toContain('Start the watch<span class="unseen"> for Ring 2: Time to soak in</span>');
  expect(html).toContain('<span class="unseen" role="status"></span>');
});
describe('what is heard of a field behind its name', () => {
  const rain = cellOf(stormRunoff.inputs, 'rainIn');
  it('begins with its unit in words, in either system, and ends with what is wrong with it', () => {
    expect(described(draw(rain))[0]).toBe('inches');
    expect(described(draw(rain, { system: 'si' }))[0]).toBe('millimeters');
    expect(described(draw(rain, { problem: 'Rain must be a number.' })).at(-1)).toBe('Rain must be a number.');
  });
  it('has room for a doubt about the number, which is there before there is one', () => {
    const html = draw(rain);
    expect(html).toContain('<p class="doubt" role="status" id="f-doubt"></p>');
    expect(described(html)).toContain('');
  });
  it('names no unit where a count has none, and nothing that is not there', () => {
    expect(described(draw(cellOf(kitchenSink.inputs, 'bareCount')))).not.toContain('a count');
    for (const input of Object.values(kitchenSink.inputs))
      if (input.kind !== 'rows' && input.kind !== 'months' && input.kind !== 'record')
        for (const part of described(draw(input, { problem: 'It is wrong.' }))) expect(part).not.toContain('is missing');
  });
});
