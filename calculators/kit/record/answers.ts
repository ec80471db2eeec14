import type { UnitSystem } from '../../units/units.ts';

/**
 * What people answered about a record stands in the first line of its text, `#= unit=mm; blank=none`, so that the text alone says how it
 * is to be read, wherever it is kept. Links carry neither.
 */
export type Answers = Readonly<Record<string, string>>;
const mark = '#=';
/** Ours are far shorter. */
const longestAnswers = 1000;

export function splitAnswers(text: string): { readonly answers: Answers; readonly body: string } {
  if (!text.startsWith(mark)) return { answers: {}, body: text };
  const end = text.indexOf('\n');
  const line = text.slice(0, Math.min(end < 0 ? text.length : end, longestAnswers));
  const pairs = line
    .slice(mark.length)
    .split(';')
    .map((pair) => pair.split('='))
    .flatMap(([name = '', value = '']): (readonly [string, string])[] => (value.trim() === '' ? [] : [[name.trim(), value.trim()]]));
  return { answers: Object.fromEntries(pairs), body: end < 0 ? '' : text.slice(end + 1) };
}

export function withAnswers(answers: Answers, body: string): string {
  const pairs = Object.entries(answers).filter(([, value]) => value !== '');
  return pairs.length === 0 ? body : `${mark} ${pairs.map(([name, value]) => `${name}=${value}`).join('; ')}\n${body}`;
}

/** A change of any other answer asks for a new look at what was understood. */
export const answered = (text: string, name: string, value: string): string => {
  const { answers, body } = splitAnswers(text);
  const { confirmed, ...others } = answers;
  return withAnswers(name === 'confirmed' ? { ...answers, confirmed: value } : { ...others, [name]: value }, body);
};
/**
 * Another text: what was answered about the last one holds as long as lines are only added or mended, not when the whole is replaced. One that begins
 * under a reader of metric units keeps for good that its bare numbers are millimeters, where nothing in it says otherwise.
 */
export const withBody = (text: string, body: string, isNew: boolean, system: UnitSystem): string => {
  if (body.trim() === '') return body;
  const last = splitAnswers(text);
  if (isNew || last.body.trim() === '') return system === 'si' && !body.startsWith(mark) ? withAnswers({ bare: 'mm' }, body) : body;
  const { confirmed, ...others } = last.answers;
  return withAnswers(others, body);
};
