import type { Page } from '@playwright/test';

/** Each chapter of an open book as XHTML, by the id of its heading: formulas as MathML alone, drawings with their colors written out, nothing that only a screen uses. */
export const asXhtml = async (page: Page): Promise<ReadonlyMap<string, string>> =>
  new Map(
    await page.evaluate(() => {
      const drawn = ['fill', 'stroke', 'stroke-width', 'stroke-dasharray', 'font-size', 'font-weight', 'text-anchor', 'opacity'];
      const serializer = new XMLSerializer();
      return [...document.querySelectorAll<HTMLElement>('.chapter')].map((chapter) => {
        for (const part of chapter.querySelectorAll<SVGElement>('svg, svg *')) {
          const look = getComputedStyle(part);
          const written = drawn.map((name) => [name, look.getPropertyValue(name)] as const).filter(([, value]) => value !== '' && value !== 'none');
          for (const name of ['fill', 'stroke']) part.removeAttribute(name);
          part.setAttribute(
            'style',
            [...written, ...(look.fill === 'none' ? [['fill', 'none']] : [])].map(([name, value]) => `${name}:${value}`).join(';'),
          );
        }
        for (const formula of chapter.querySelectorAll('.katex')) {
          const math = formula.querySelector('math');
          math?.querySelector('annotation')?.remove();
          if (math) formula.replaceWith(math);
        }
        for (const each of chapter.querySelectorAll('[style]:not(svg, svg *)')) each.removeAttribute('style');
        for (const each of chapter.querySelectorAll('[aria-live], [popover], [tabindex], [role="status"]')) {
          for (const name of ['aria-live', 'popover', 'tabindex', 'role']) each.removeAttribute(name);
        }
        const inside = [...chapter.childNodes].map((node) => serializer.serializeToString(node)).join('');
        return [chapter.querySelector('h1')?.id ?? '', inside.replaceAll(/ xmlns="http:\/\/www\.w3\.org\/1999\/xhtml"/g, '')] as const;
      });
    }),
  );
