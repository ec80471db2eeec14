// Runs in the browser: the form of the definition that holds one of everything, as the site would start it.
import { render } from 'preact';
import { Below } from '../../calculators/ui/Below.tsx';
import { CalculatorForm } from '../../calculators/ui/CalculatorForm.tsx';
import { LaterPart } from '../../calculators/ui/LaterPart.tsx';
import { Picture } from '../../calculators/ui/pictures/Picture.tsx';
import { RecordField } from '../../calculators/ui/RecordField.tsx';
import { tables } from '../../calculators/ui/tables.ts';
import { toolSet } from '../../calculators/ui/tools/toolSet.ts';
import { twoSides } from '../../calculators/ui/twoSides.ts';
import kitchenSink from '../kit/kitchenSink.ts';

const root = document.getElementById('form');
if (root)
  render(
    <CalculatorForm
      calculator={kitchenSink}
      id="sink"
      records={RecordField}
      parts={{ tables, two: twoSides, tools: toolSet }}
      built={{ Picture, LaterPart, Below }}
      store={{
        read: (key) => sessionStorage.getItem(key),
        write: (key, text) => (text === null ? sessionStorage.removeItem(key) : sessionStorage.setItem(key, text)),
      }}
    />,
    root,
  );
