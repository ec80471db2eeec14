import * as v from 'valibot';
import { monthName } from '../../../calculators/units/months.ts';
import { rules } from '../../../content/local/schema.ts';
import { officeSections } from './fields.ts';
import { longestList, longestWords, type Office, officeSchema } from './office.ts';
import { type Placed, placedAt } from './placedAt.ts';

/** One thing that is wrong, in words: no message of a schema reaches a person. */
export interface Wrong {
  /** Path in the file. */
  readonly at: string;
  /** `Hay, likely`. */
  readonly label: string;
  /** What is wrong there, and what would be right. */
  readonly say: string;
}
type Issue = v.BaseIssue<unknown>;

const quoted = (value: unknown): string => {
  if (value === null || value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a group of values';
  const text = String(value);
  return `“${text.length > 40 ? `${text.slice(0, 40)}…` : text}”`;
};
const member = (value: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((here, step) => (typeof here === 'object' && here !== null ? Reflect.get(here, step) : undefined), value);

/** What a place is called: `Hay, likely`, `Heights to start and to stop, row 2: Stop, high`, `Rain, March`. */
function labelOf({ section, field, row, month }: Placed): string {
  const which = row === undefined ? '' : `${section.rows?.one ?? 'Row'} ${row + 1}`;
  if (!field) return which === '' ? section.title : `${section.title}, ${which.toLowerCase()}`;
  const own = month === undefined ? field.label : `${field.label}, ${monthName(month)}`;
  if (which !== '') return `${which}: ${own}`;
  return own.startsWith(section.title) || section.at === 'head' ? own : `${section.title}: ${own}`;
}

const lowToHigh = ['low', 'likely', 'high'];
const orders = [
  { keys: ['lowUsdPerTon', 'likelyUsdPerTon', 'highUsdPerTon'], names: lowToHigh },
  { keys: ['buyBackLowUsd', 'buyBackLikelyUsd', 'buyBackHighUsd'], names: lowToHigh },
  { keys: lowToHigh, names: lowToHigh },
  { keys: ['poorLbPerAc', 'normalLbPerAc', 'goodLbPerAc'], names: ['poor', 'normal', 'good'] },
  { keys: ['fastDays', 'slowDays'], names: ['fast growth', 'slow growth'] },
];
/** `95 is under low (120). Low, likely, high in that order.` at the one that breaks it. */
function ofOrder(at: string, values: unknown): Wrong {
  const { keys, names } = orders.find((each) => each.keys.some((key) => typeof member(values, key) === 'number')) ?? { keys: [], names: [] };
  const known = keys.flatMap((key, index) => {
    const value = member(values, key);
    return typeof value === 'number' ? [{ key, value, name: names[index] ?? key }] : [];
  });
  const broken = known.findIndex(({ value }, index) => index > 0 && value < (known[index - 1]?.value ?? value));
  const [before, here] = [known[broken - 1], known[broken]];
  const path = here ? `${at}.${here.key}` : at;
  const told = here && before ? `${here.value} is under ${before.name} (${before.value}). ` : '';
  const inOrder = names.join(', ');
  return wrong(path, `${told}${inOrder.charAt(0).toUpperCase()}${inOrder.slice(1)} in that order.`);
}
const numbers = (list: unknown): readonly number[] => (Array.isArray(list) ? list.filter((each) => typeof each === 'number') : []);
function ofSum(at: string, list: unknown): Wrong {
  const sum = Math.round(numbers(list).reduce((total, each) => total + each, 0) * 100) / 100;
  const off = Math.round(Math.abs(100 - sum) * 100) / 100;
  return wrong(at, `The twelve months add up to ${sum}; ${off} ${off === 1 ? 'is' : 'are'} ${sum < 100 ? 'missing' : 'too many'}.`);
}
const ofRules: Readonly<Record<string, (at: string, input: unknown) => Wrong>> = {
  [rules.order]: ofOrder,
  [rules.monthsSum]: ofSum,
  [rules.rangeOrder]: (at, input) => wrong(`${at}.0`, `${numbers(input)[0]} is over the high end (${numbers(input)[1]}). The low end comes first.`),
  [rules.stop]: (at) => wrong(`${at}.stopIn.0`, 'Give a height to stop at, or the pounds to leave on the ground.'),
  [rules.bite]: (at) =>
    wrong(
      `${at}.startIn.0`,
      'Grazing must start at least 2 inches above where it stops, low over low and high over high, and start low above stop high. With less no rest comes out right.',
    ),
  [rules.growth]: (at) => wrong(at, 'Give a curve, or leave all of it out.'),
  [rules.hayKind]: (at, input) => wrong(at, `${quoted(input)} names a kind of hay again. The kind stands in its own field, and there is one only.`),
  [rules.growthOrder]: (at) =>
    wrong(
      `${at}.quitMonth`,
      'The months must come in order: growth starts, is best, quits, at most 12 months, over New Year if need be. With growth in the fall, the last month comes after the best one.',
    ),
  [rules.noPrice]: (at) => wrong(at, 'No price stands here. Give one, or leave all of it out.'),
};

function wrong(at: string, say: string): Wrong {
  const placed = placedAt(at);
  return { at, label: placed ? labelOf(placed) : (officeSections.find((each) => each.at.startsWith(`${at}.`))?.title ?? at), say };
}
const noNames: Readonly<Record<string, string>> = {
  file: 'This is no office file of these pages: its first value must be “file”: “holdwater-office”.',
  v: 'This file was made for another version of these pages. Open it on the page “Make it yours” of the copy that made it.',
  head: 'The office itself is missing. Its name is the least.',
  values: 'The values are missing.',
};

/** One issue of the schema in words; `at` may be another place than the issue's, where that is the one to mend. */
function told(issue: Issue): Wrong {
  const at = v.getDotPath(issue) ?? '';
  const say = noNames[at];
  if (say !== undefined) return { at, label: '', say };
  if (issue.type === 'check') return ofRules[issue.message]?.(at, issue.input) ?? wrong(at, 'These values do not go together.');
  const placed = placedAt(at);
  const right = placed?.field?.right;
  const write = right === undefined ? '' : `; write ${right}`;
  const { input } = issue;
  if (issue.type === 'strict_object' && issue.expected === 'never')
    return wrong(at, 'There is no such value in an office file. Take it out, or look at how its name is spelled.');
  if (input === undefined || input === null) return wrong(at, `This is missing${write}.`);
  switch (issue.type) {
    case 'number':
      return wrong(at, `${quoted(input)} is no number${write}.`);
    case 'gt_value':
      return wrong(at, `${quoted(input)} is not above zero${write}.`);
    case 'min_value':
      return wrong(at, `${quoted(input)} is under zero${write}.`);
    case 'length':
      return wrong(at, `Twelve months are needed, January first; these are ${Array.isArray(input) ? input.length : 'none'}.`);
    case 'picklist':
      return wrong(at, `${quoted(input)} is not in the list${write}.`);
    case 'min_length':
      return wrong(at, `This is empty${write}.`);
    case 'iso_date':
    case 'regex':
      return wrong(at, `${quoted(input)} cannot be read${write}.`);
    default:
      return wrong(at, `${quoted(input)} cannot stand here${write}.`);
  }
}

/** Texts and lists longer than any office would write, wherever they stand. */
function tooLong(value: unknown, at = ''): readonly Wrong[] {
  if (typeof value === 'string')
    return value.length > longestWords ? [wrong(at, `This text has ${value.length} letters; at most ${longestWords} can stand here.`)] : [];
  if (typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value) && value.length > longestList)
    return [wrong(at, `This list has ${value.length} entries; at most ${longestList} can stand here.`)];
  return Object.entries(value).flatMap(([key, each]) => tooLong(each, at === '' ? key : `${at}.${key}`));
}

/** What data of an office file is worth: the office, or each thing that is wrong with it, in words. */
export function checkOffice(data: unknown): { readonly office: Office } | { readonly wrongs: readonly Wrong[] } {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return { wrongs: [{ at: '', label: '', say: noNames['file'] ?? '' }] };
  const long = tooLong(data);
  if (long.length > 0) return { wrongs: long };
  const read = v.safeParse(officeSchema, data);
  if (read.success) return { office: read.output };
  const isOther = read.issues.find((issue) => ['file', 'v'].includes(v.getDotPath(issue) ?? ''));
  return { wrongs: (isOther ? [isOther] : read.issues).map(told) };
}
/** `Line 14, hay, likely: “abc” is no number; …` */
export const sentenceOf = ({ label, say }: Wrong, line: number | undefined): string => {
  const where = [...(line === undefined ? [] : [`Line ${line}`]), ...(label === '' ? [] : [label])].join(', ');
  return where === '' ? say : `${where}: ${say}`;
};
