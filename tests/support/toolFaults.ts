import type { Input, Inputs } from '../../calculators/kit/inputs.ts';
import type { Marks, Tally, Tool } from '../../calculators/kit/tools.ts';
import { isBare, unitIn, units } from '../../calculators/units/units.ts';

/** What a thumb can time: a day is none of it. */
const isTimed = (input: Input): boolean =>
  input.kind === 'number' && ['s', 'min', 'hr'].includes(input.unit) && units[input.unit].dimension === 'time';

function faultsOfMarks(input: Input, { label, atS, says }: Marks): readonly string[] {
  return [
    ...(input.kind === 'number' && !isTimed(input) ? ['marks on a number need seconds, minutes or hours'] : []),
    ...(label.trim() === '' || label.endsWith(':') ? ['marks need a label without a colon'] : []),
    ...(atS.length > 0 && atS.length === says.length ? [] : ['every mark needs its words']),
    ...(says.some((each) => each.trim() === '') ? ['a mark has no words'] : []),
    ...(atS.every((mark, index) => mark > (atS[index - 1] ?? 0) && mark <= 86_400) ? [] : ['marks must rise from 0']),
  ];
}

function faultsOfTally(input: Input, { group, until, label }: Tally, all: Inputs): readonly string[] {
  if (input.kind !== 'number') return ['a tally needs a number'];
  const others = Object.values(all).flatMap((other) =>
    other.kind === 'number' && other.tool?.kind === 'tally' && other.tool.group === group ? [{ ...other.tool, side: other.belongsTo }] : [],
  );
  return [
    ...(input.whole && input.min === 0 && isBare(input.unit) && unitIn('si', input.unit) === input.unit ? [] : ['a tally needs whole counts from 0']),
    ...(until > 0 && until <= input.max ? [] : ['a tally must end within the limit of its input']),
    ...(others.length >= 2 && others.every((other) => other.until === until && other.side === input.belongsTo)
      ? []
      : ['a tally needs a group of one side and one end']),
    ...(others.filter((other) => other.label === label).length === 1 && label.trim() !== '' && label.length <= 24
      ? []
      : ['each button of a tally needs a short label of its own']),
  ];
}

/** What is wrong with the tool of one input, in words. `all` holds the inputs beside it; a table has none, for a tally in a row is nothing that a hand can tap. */
export function faultsOfTool(input: Input, all: Inputs): readonly string[] {
  const tool: Tool | undefined = 'tool' in input ? input.tool : undefined;
  if (!tool) return [];
  switch (tool.kind) {
    case 'stopwatch':
      return isTimed(input) ? [] : ['a stopwatch needs seconds, minutes or hours'];
    case 'marks':
      return faultsOfMarks(input, tool);
    case 'tally':
      return faultsOfTally(input, tool, all);
  }
}
