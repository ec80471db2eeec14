import { useMemo, useRef, useState } from 'preact/hooks';
import { type Inputs, usesTools } from '../kit/inputs.ts';
import type { Tables, Tools } from './props.ts';
import type { TwoSides } from './twoSides.ts';

/** What a form can do without until somebody compares, or opens a group with a table or a field tool. */
export interface Parts {
  readonly tables?: Tables | undefined;
  readonly two?: TwoSides | undefined;
  readonly tools?: Tools['draw'] | undefined;
}

/**
 * Fetches all parts that these inputs can need.
 * @throws Error if their scripts cannot be had
 */
export async function fetchParts(inputs: Inputs): Promise<Parts> {
  const [{ tables }, { twoSides }, tools] = await Promise.all([
    import('./tables.ts'),
    import('./twoSides.ts'),
    usesTools(inputs) ? fetchTools() : {},
  ]);
  return { tables, two: twoSides, ...tools };
}
export const fetchTools = (): Promise<Pick<Parts, 'tools'>> => import('./tools/toolSet.ts').then(({ toolSet }) => ({ tools: toolSet }));

/** The parts that are there, and what brings the others: at once where all are, so that nothing waits for what has come. */
export function useParts(given: Parts, inputs: Inputs) {
  const [parts, setParts] = useState(given);
  const now = useRef(given);
  const withAll = useMemo(
    () =>
      (then: () => void, onMissing: (error: unknown) => void = console.info): void => {
        if (now.current.tables && now.current.two) {
          then();
          return;
        }
        void fetchParts(inputs).then((all) => {
          now.current = all;
          setParts(all);
          then();
        }, onMissing);
      },
    [],
  );
  return { ...parts, withAll };
}
