import { render } from 'preact';
import type { Calculator } from '../../calculators/kit/define.ts';
import type { Change } from '../../calculators/ui/formProps.ts';
import type { Markup } from '../../calculators/ui/markup.ts';
import type { DrawPicture } from '../../calculators/ui/pictures/loadPicture.tsx';
import type { namesNow } from './names.ts';
import { bringWorking, showFormulas } from './working.ts';

/** Late enough not to race with reading and typing; early enough for a print from the browser's own menu. */
const aheadMs = 1500;

const textOf = (selector: string): string => document.querySelector(selector)?.textContent?.trim() ?? '';
/** What the built page holds for its pages behind. */
const behind = [
  { title: 'What this cannot tell', at: '.limits ul' },
  { title: 'Someone to talk to', at: '.talk ul' },
  { title: 'Sources', at: '.sources .references' },
];

/** Keeps a handout ready: drawn when the browser is about to print, gone when it has. */
export function startPrint(
  calculator: Calculator,
  {
    Picture,
    address,
    names,
  }: {
    readonly Picture: DrawPicture | undefined;
    readonly address: () => string | undefined;
    readonly names: (placeTitle: string | undefined) => ReturnType<typeof namesNow> | undefined;
  },
): { readonly follow: (change: Change) => void; readonly print: () => void } {
  let latest: Change | undefined;
  let handout: typeof import('../../calculators/ui/Handout.tsx') | undefined;
  const paper = document.createElement('div');
  paper.className = 'paper';
  let working: readonly Markup[] | undefined;
  const load = async () => {
    [handout, working] = await Promise.all([handout ?? import('../../calculators/ui/Handout.tsx'), working ?? bringWorking(calculator.slug)]);
  };
  const draw = () => {
    if (!handout || !working || !latest) return;
    showFormulas();
    document.body.append(paper);
    // It is measured before the paper's own rules hold.
    document.documentElement.dataset['paper'] = '';
    const placeTitle = latest.place?.title;
    handout.drawPaper(paper, {
      ...(names(placeTitle) ?? { title: placeTitle, by: undefined }),
      calculator,
      change: latest,
      Picture,
      question: textOf('h1'),
      address: address(),
      working,
      behind: behind.flatMap(({ title, at }) => {
        const list = document.querySelector(at);
        return list ? [{ title, list }] : [];
      }),
    });
  };
  const clear = () => {
    delete document.documentElement.dataset['paper'];
    render(null, paper);
    paper.remove();
  };
  addEventListener('beforeprint', draw);
  addEventListener('afterprint', clear);
  setTimeout(() => void load().catch(console.info), aheadMs);
  return {
    follow: (change) => {
      latest = change;
    },
    // Without its chunk the page itself prints, as plain as it stands.
    print: () =>
      void load()
        .catch(console.info)
        .then(() => window.print()),
  };
}
