import { describe } from 'vitest';
import { itObeysTheLaws } from '../support/definitionLaws.ts';
import { itIsWellDeclared } from '../support/definitionShape.ts';
import kitchenSink from './kitchenSink.ts';

describe('a definition that holds one of everything', () => {
  itIsWellDeclared(kitchenSink);
  itObeysTheLaws(kitchenSink);
});
