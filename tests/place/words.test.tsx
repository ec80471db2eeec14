// One frame for all that is typed in words at the place and at the office, drawn without a browser.
import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { TextView } from '../../src/place/ui/FieldView.tsx';
import { Words } from '../../src/place/ui/Words.tsx';

const none = (): void => {};
/** The opening tags, with what a reader of the screen is told, and the words. */
const drawn = (node: VNode): string => render(node).replaceAll(/ (?:autocomplete|enterkeyhint|maxlength)="[^"]*"/gi, '');

it('several lines grow with what is written, and a paragraph stays one', () => {
  expect(drawn(<Words id="said" label="What was said" help="Their words." text={'one\ntwo\nthree'} onText={none} />)).toBe(
    '<div class="field words-field"><p class="field-name"><label for="said">What was said</label></p><small class="field-hint" id="said-help">Their words.</small>' +
      '<div class="control"><textarea id="said" rows="4" aria-describedby="said-help">one\ntwo\nthree</textarea></div></div>',
  );
  expect(drawn(<Words id="lead" label="Lead" of="Line 2" text="One sentence." problem="Too long." isParagraph onText={none} onLeave={none} />)).toBe(
    '<div class="field long-field is-wrong"><p class="field-name"><label for="lead"><span class="unseen">Line 2: </span>Lead</label></p>' +
      '<div class="control"><textarea id="lead" rows="2" aria-invalid="true" aria-describedby="lead-problem">One sentence.</textarea></div>' +
      '<p class="problem" id="lead-problem">Too long.</p></div>',
  );
});
it('a line stands in the same frame', () => {
  const cell = { kind: 'text', label: 'Who', isNeeded: true, help: 'A name.' } as const;
  expect(drawn(<TextView id="who" cell={cell} of={undefined} text="Ana" problem="Missing." onText={none} onLeave={none} />)).toBe(
    '<div class="field is-wrong"><p class="field-name"><label for="who">Who</label></p><small class="field-hint" id="who-help">A name.</small>' +
      '<div class="control"><input id="who" type="text" value="Ana" aria-invalid="true" aria-describedby="who-help who-problem"/></div>' +
      '<p class="problem" id="who-problem">Missing.</p></div>',
  );
});
