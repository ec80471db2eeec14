import type { Answers } from './answers.ts';
import { type Assembled, assemble, type Gaps, type ReadCell } from './assemble.ts';
import type { Question, Said } from './said.ts';

const gapOptions = [
  { value: 'not-read', label: 'Not read: they count as missing' },
  { value: 'none', label: 'No rain' },
];
const gapAnswer = (answers: Answers, name: string): Gaps => (answers[name] === 'none' ? 'none' : 'not-read');
/** What holds while nobody says otherwise; what is not here, people must say. */
const unasked: Readonly<Record<string, string>> = { blank: 'not-read', unlisted: 'not-read', 'after-blanks': 'day' };

/** The days put together as people say that gaps are meant. */
export function withGaps(cells: readonly ReadCell[], isMonthly: boolean, answers: Answers): Assembled & Said {
  const assembled = assemble({
    cells,
    isMonthly,
    blank: gapAnswer(answers, 'blank'),
    unlisted: gapAnswer(answers, 'unlisted'),
    afterBlanks: answers['after-blanks'] === 'total' ? 'total' : 'day',
    twice: answers['twice'],
  });
  const questions = assembled.asks.map(({ name, ask, options = gapOptions }): Question => {
    const given = options.find(({ value }) => value === answers[name])?.value;
    return { name, ask, options, answer: given ?? unasked[name] ?? '' };
  });
  return { ...assembled, questions };
}
