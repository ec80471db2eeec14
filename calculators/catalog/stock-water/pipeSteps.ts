import { byCase, formula, lookup, type Step, tex } from '../../kit/steps.ts';
import type { Results } from './compute.ts';
import type { Values } from './inputs.ts';

type All = Values & Results;
/** Water reaches a trough through a pipe that was given. */
export const isPiped = ({ supply, drinkFrom, pipe }: Pick<Values, 'supply' | 'drinkFrom' | 'pipe'>): boolean =>
  pipe === 'piped' && (supply === 'flow' || (supply === 'pond' && drinkFrom === 'trough'));

/** What the pipe between the water and the trough lets through. */
export const pipeSteps: readonly Step<All, Results>[] = [
  lookup('pipeInsideIn', { onlyWhen: isPiped, says: 'Inside of that pipe. From memory of the standard.', source: 'astm-d2239' }),
  formula(
    'pipeGpm',
    tex`(\frac{100 \times \q{pipeHeadFt} \times \q{pipeInsideIn}^{4.8655}}{0.2083 \times (\frac{100}{140})^{1.852} \times \q{pipeLengthFt}})^{1 / 1.852}`,
    {
      onlyWhen: isPiped,
      says: 'Flow at which friction uses up the whole fall (Hazen-Williams, 140 for plastic).',
      source: 'engineering-toolbox-hazen-williams, equation 1 solved for the flow',
    },
  ),
  byCase('arrivesGpm', {
    onlyWhen: ({ supply }) => supply === 'flow',
    says: 'What reaches the trough.',
    source: 'common practice',
    ways: [
      { when: ({ pipe }) => pipe === 'piped', formula: tex`\min(\q{flowGpm}, \q{pipeGpm})`, because: 'the pipe lets no more through' },
      { formula: tex`\q{flowGpm}` },
    ],
  }),
];
