/**
 * How fast the season steps, and how that compares to the same loop in C, the two in turn: part of `npm run bench`. Run by Node itself, because the tests'
 * own loader turns each function of another file into a look-up, which costs this loop nine tenths of its speed.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { FLAG, GROUND, numberAt, ROW, rowAt, SKY, STATE, SUM, YEAR } from '../../calculators/season/flat.ts';
import { yearsFrom } from '../../calculators/season/hayYears.ts';
import { runKernel } from '../../calculators/season/kernel.ts';
import { memoryOf } from '../../calculators/season/memory.ts';
import { planOf } from '../../calculators/season/plan.ts';
import { demoWeather, manyPaddocks, sideOf, skyWith } from '../support/seasonPlace.ts';

/** Eleven paddocks and a meadow under a herd that moves, through the demo place's thirty years, over and over. */
const rounds = 40;
const passes = 5;
const management = { ...manyPaddocks.management, stubbleLbPerAc: 800, pullBelowDays: 10 };
const sky = skyWith(demoWeather());
const side = sideOf({ grazed: 0.0452, meadow: 0.061 }, { ...manyPaddocks, paddocks: 11, management });
const plan = planOf(sky, side);
const { period, count } = yearsFrom(sky, side.management.turnOut);
const millions = (sky.days * plan.paddocks) / 1e6;

/** Passes over the record by years: the seconds of the quickest, and the sums that one leaves. */
function run(): { readonly seconds: number; readonly sums: Float64Array } {
  let best: ReturnType<typeof run> = { seconds: Number.POSITIVE_INFINITY, sums: new Float64Array() };
  for (let again = 0; again < passes; again += 1) {
    const memory = memoryOf(plan, count);
    const began = process.hrtime.bigint();
    for (let from = 0; from < sky.days; from += 365) runKernel(plan, sky, period, memory, from, Math.min(sky.days, from + 365));
    const seconds = Number(process.hrtime.bigint() - began) / 1e9;
    if (seconds < best.seconds) best = { seconds, sums: memory.sums };
  }
  return best;
}
const totalOf = (sums: Float64Array, field: number): number => {
  let total = 0;
  for (let at = field - ROW.sums; at < sums.length; at += ROW.width - ROW.sums) total += numberAt(sums, at);
  return total;
};

/** What the program in C includes: places as definitions, numbers of the side as variables that it reads when it runs. */
function sideHeader(): { readonly text: string; readonly numbers: Float64Array } {
  const places = Object.entries({ FLAG, GROUND, ROW, SKY, STATE, SUM, YEAR }).flatMap(([name, fields]) =>
    Object.entries(fields).map(([field, at]) => `#define ${name}_${field} ${at}`),
  );
  const named = (name: string, fields: object): (readonly [string, number])[] =>
    Object.entries(fields).flatMap(([field, value]: [string, unknown]) => (typeof value === 'number' ? [[`${name}_${field}`, value] as const] : []));
  const real = [...named('GRASS', side.grass), ...named('RULE', side.management)];
  const whole = Object.entries({ DAYS: sky.days, PADDOCKS: plan.paddocks, PERIODS: count, PASSES: passes });
  const all = [...real, ...whole];
  const reads = all.map(([name], at) => `  ${name} = numbers[${at}];`);
  return {
    numbers: Float64Array.from(all, ([, value]) => value),
    text: [
      ...places,
      `static double ${real.map(([name]) => name).join(', ')};`,
      `static int ${whole.map(([name]) => name).join(', ')};`,
      'static void read_side(const double *numbers) {',
      ...reads,
      '}',
      '',
    ].join('\n'),
  };
}

/** The same loop in C, made by `cc -O2`; nothing where there is no compiler. */
function compiled(folder: string): string | undefined {
  const { text, numbers } = sideHeader();
  writeFileSync(join(folder, 'side.h'), text);
  const { demandLb, flags, dry, wet, factor } = plan;
  const { daily, monthDay } = sky;
  // All rows lie in one buffer.
  const whole = (rows: readonly Float64Array[]): Float64Array => new Float64Array(rowAt(rows, 0).buffer);
  const tables = { dry: dry.at, dryStep: dry.step, wet: wet.at, wetStep: wet.step, factor: factor.at, factorStep: factor.step };
  const arrays = { numbers, demandLb, flags, ...tables, period, daily, monthDay, rows: whole(memoryOf(plan, 1).rows) };
  for (const [name, { buffer, byteOffset, byteLength }] of Object.entries(arrays)) {
    writeFileSync(join(folder, name), new Uint8Array(buffer, byteOffset, byteLength));
  }
  const program = join(folder, 'season');
  try {
    execFileSync('cc', ['-O2', `-I${folder}`, '-o', program, fileURLToPath(new URL('season.c', import.meta.url)), '-lm'], { stdio: 'pipe' });
    return program;
  } catch (error) {
    console.log(`no C to compare with: ${String(error).slice(0, 600)}`);
    return undefined;
  }
}

const folder = mkdtempSync(join(tmpdir(), 'season-'));
const program = compiled(folder);
const speeds: { readonly here: number; readonly inC: number }[] = [];
for (let round = 0; round < rounds; round += 1) {
  const here = run();
  const [seconds = Number.NaN, ...sums] = program ? execFileSync(program, [folder], { encoding: 'utf8' }).trim().split(' ').map(Number) : [];
  for (const [index, field] of [SUM.runoff, SUM.grown, SUM.eaten].entries()) {
    // The one in C calls another e^−x, so a sum of thirty years may differ in its last digits.
    const off = Math.abs(totalOf(here.sums, field) / (sums[index] ?? Number.NaN) - 1);
    if (program && !(off < 1e-9)) throw new RangeError(`the two loops differ by ${off}`);
  }
  speeds.push({ here: millions / here.seconds, inC: millions / seconds });
}
rmSync(folder, { recursive: true });
const best = (of: (speed: (typeof speeds)[number]) => number): number => Math.max(...speeds.map(of));
const [here, inC] = [best((speed) => speed.here), best((speed) => speed.inC)];
const compared = program ? `, ${inC.toFixed(1)} in C, ratio ${(inC / here).toFixed(2)}` : '';
console.log(`The season, million paddock-days a second, best of ${rounds}: ${here.toFixed(1)} here${compared}`);
