import type { Topic } from '../../calculators/kit/topics.ts';

/** What values from outside are listed under: folders of the math package, and calculators by their topic. */
export interface CheckSubject {
  readonly slug: string;
  readonly title: string;
  readonly says: string;
  readonly math: readonly string[];
  readonly topics: readonly Topic[];
}

/** Each has a page of its own, `/checks/<slug>/`: all of them on one are more than a phone draws at ease. */
export const checkSubjects: readonly CheckSubject[] = [
  {
    slug: 'rain',
    title: 'Rain',
    says: 'Inches, gallons and tons; rain records; calculators of rain and the ground, worked whole.',
    math: ['water'],
    topics: ['rain'],
  },
  { slug: 'weather', title: 'Weather', says: 'Sun, wind, humidity and the water that air takes up.', math: ['weather'], topics: [] },
  { slug: 'runoff', title: 'Runoff of a storm', says: 'Curve numbers, and how much of a storm they let run off.', math: ['runoff'], topics: [] },
  {
    slug: 'soil',
    title: 'Soil',
    says: 'Texture, density, soil groups, and the water that a soil can hold.',
    math: ['soil', 'soilGroup'],
    topics: [],
  },
  { slug: 'roots', title: 'Water at the roots', says: 'How grass uses the water in its soil, day by day.', math: ['soilWater'], topics: [] },
  {
    slug: 'tests-of-soil',
    title: 'Tests of soil, and demonstrations',
    says: 'Water going into the ground, counts and tests by hand, rain made for a crowd.',
    math: ['infiltration', 'demonstration'],
    topics: ['tailgate'],
  },
  { slug: 'soil-loss', title: 'Soil loss', says: 'Slope, cover, rain and soil in the soil-loss equations.', math: ['erosion'], topics: [] },
  {
    slug: 'forage',
    title: 'Forage, rest and moves',
    says: 'Forage measured and shared out, regrowth, rest, paddocks.',
    math: ['forage', 'rotation'],
    topics: [],
  },
  { slug: 'herd', title: 'Herd', says: 'What animals eat, animal units, months of feed for a herd.', math: ['herd'], topics: [] },
  { slug: 'grass', title: 'Grass and the herd', says: 'Calculators of grass and the herd, worked whole.', math: [], topics: ['grass'] },
  {
    slug: 'hay',
    title: 'Hay and money',
    says: 'Bales, losses, prices, feeding against selling.',
    math: ['hay', 'money', 'decision'],
    topics: ['hay'],
  },
  {
    slug: 'harm',
    title: 'Water and feed that can harm',
    says: 'Nitrate, sulfate and salt; what stock drink, tanks and pipes.',
    math: ['hazards', 'stockWater'],
    topics: ['harm'],
  },
  {
    slug: 'ahead',
    title: 'Drought and the season ahead',
    says: 'How dry it is against other years, what dates decide, the season day by day.',
    math: ['drought', 'growth'],
    topics: ['ahead'],
  },
  { slug: 'chance', title: 'Chance', says: 'The functions of statistics that counts, averages and odds rest on.', math: ['special'], topics: [] },
];

const found = (subject: CheckSubject | undefined, what: string): CheckSubject => {
  if (!subject) throw new Error(`${what} is in no subject of src/catalog/checkSubjects.ts`);
  return subject;
};
/** @throws Error for a folder that no subject has */
export const subjectOfMath = (folder: string): CheckSubject =>
  found(
    checkSubjects.find(({ math }) => math.includes(folder)),
    `calculators/math/${folder}`,
  );
/** @throws Error for a topic that no subject has */
export const subjectOfTopic = (topic: Topic): CheckSubject =>
  found(
    checkSubjects.find(({ topics }) => topics.includes(topic)),
    `topic ${topic}`,
  );
