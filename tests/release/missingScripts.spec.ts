// Each script of each kind of page, missing in turn.
import { test } from '@playwright/test';
import { expectSaid, kinds } from '../browser/missing.ts';

for (const kind of kinds)
  test(`${kind.name}: whichever script is missing, the page says so and hides nothing`, ({ browser }) => expectSaid(browser, kind));
