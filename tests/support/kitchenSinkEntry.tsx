// Runs in the browser: the form of the definition that holds one of everything, as the site would start it.
import { render } from 'preact';
import { CalculatorForm } from '../../calculators/ui/CalculatorForm.tsx';
import { Picture } from '../../calculators/ui/pictures/Picture.tsx';
import { RecordField } from '../../calculators/ui/RecordField.tsx';
import { toolSet } from '../../calculators/ui/tools/toolSet.ts';
import kitchenSink from '../kit/kitchenSink.ts';

const root = document.getElementById('form');
if (root)
  render(
    <CalculatorForm
      calculator={kitchenSink}
      id="sink"
      Picture={Picture}
      tools={toolSet}
      records={RecordField}
      store={{
        read: (key) => sessionStorage.getItem(key),
        write: (key, text) => (text === null ? sessionStorage.removeItem(key) : sessionStorage.setItem(key, text)),
      }}
    />,
    root,
  );
