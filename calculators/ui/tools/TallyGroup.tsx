import { tallyOf } from '../../kit/screen.ts';
import { isShown, textIn } from '../../kit/state.ts';
import type { TallyGroupProps } from '../props.ts';
import { type TallyMember, TallyTool } from './TallyTool.tsx';

/** A tally where the first input of its group stands: all of the group that apply here. */
export function TallyGroup({ name, side, store, field }: TallyGroupProps) {
  const { calculator, texts, keys, problems, onTexts } = side;
  const group = tallyOf(calculator.inputs[name]);
  const [first, ...others] = Object.entries(calculator.inputs).flatMap(([each, input]): readonly TallyMember[] =>
    input.kind === 'number' && input.tool?.kind === 'tally' && input.tool.group === group && isShown(input, texts) && keys.includes(each)
      ? [{ name: each, input, tool: input.tool, text: textIn(texts[each]) }]
      : [],
  );
  if (first?.name !== name) return null;
  const members = [first, ...others] as const;
  return (
    <TallyTool
      id={side.id}
      members={members}
      store={store}
      hasProblem={members.some((member) => problems.some(({ at }) => at === member.name))}
      onCounts={(counts, at) => onTexts({ ...texts, ...counts }, at)}
    >
      {members.map((member) => field(member.name, member.input))}
    </TallyTool>
  );
}
