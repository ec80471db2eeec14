// Runs in the browser: every face that tests draw, at every width, each in a box that tells which it is.
import { render } from 'preact';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import { boxOf } from '../../calculators/ui/pictures/face/labels.ts';
import { Picture } from '../../calculators/ui/pictures/Picture.tsx';
import { faceCases, faceWidths } from './faceCases.ts';

const definitions = import.meta.glob<{ readonly default: Calculator }>('../../calculators/catalog/*/definition.ts', { eager: true });
const place = document.getElementById('faces');
const faces = Object.values(definitions).flatMap(({ default: calculator }) =>
  (faceCases[calculator.slug] ?? []).flatMap(([query, other]) => faceWidths.map((widthPx) => ({ calculator, query, other, widthPx }))),
);
if (place)
  render(
    faces.map(
      ({ calculator, query, other, widthPx }, index) =>
        calculator.picture && (
          <div key={index} data-face={`${calculator.slug} ${query} | ${other ?? ''} at ${widthPx}`} style={{ width: `${widthPx}px` }}>
            <Picture
              calculator={calculator}
              picture={calculator.picture}
              outcome={runQuery(calculator, query)}
              other={other === undefined ? null : runQuery(calculator, other)}
              titles={other === undefined ? ['', ''] : ['Grazed short', 'Rested']}
              system="us"
              id={`face${index}`}
              widthPx={widthPx}
            />
          </div>
        ),
    ),
    place,
  );
// For the spec: how wide the layout took words to be.
Object.assign(globalThis, { boxOf });
