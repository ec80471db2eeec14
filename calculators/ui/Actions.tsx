import { useEffect, useState } from 'preact/hooks';
import { type Calculator, noteOf, type Outcome } from '../kit/define.ts';

interface ActionsProps {
  readonly calculator: Calculator;
  readonly link: string;
  readonly outcome: Outcome;
  readonly other: Outcome | null;
  readonly titles: readonly [string, string];
  readonly address?: (link: string) => string;
}

/** The code to scan on the printed sheet. Its drawing is fetched only when somebody is about to print. */
function useCode(text: string | undefined): { readonly path: string; readonly size: number } | null {
  const [code, setCode] = useState<{ readonly of: string; readonly path: string; readonly size: number } | null>(null);
  useEffect(() => {
    if (text === undefined) return;
    // Late enough not to race with reading and typing; early enough for a print from the browser's own menu.
    const timer = window.setTimeout(async () => {
      const { encode } = await import('uqr');
      const { data, size } = encode(text, { ecc: 'L', border: 1 });
      const path = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
      setCode({ of: text, path, size });
    }, 1500);
    return () => clearTimeout(timer);
  }, [text]);
  return code && code.of === text ? code : null;
}

async function saveCalendar(calculator: Calculator, outcome: Outcome): Promise<void> {
  const { calendarFile } = await import('./calendarFile.ts');
  const url = URL.createObjectURL(new Blob([calendarFile(calculator, outcome.calendar)], { type: 'text/calendar' }));
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.download = `${calculator.slug}.ics`;
  anchor.click();
  // The browser reads the address after this turn.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

const withoutRecord = 'The record is not in the link: send its file along.';

/** What people take along: the link, the note, the sheet, the dates. */
export function Actions({ calculator, link, outcome, other, titles, address }: ActionsProps) {
  const [told, setTold] = useState('');
  const whole = address?.(link);
  const hasRecord = Object.values(calculator.inputs).some(({ kind }) => kind === 'record');
  const code = useCode(whole);
  useEffect(() => setTold(''), [link]);
  const copy = async (text: string, what: string) => {
    try {
      await navigator.clipboard.writeText(text);
      setTold(`${what} copied.${hasRecord ? ` ${withoutRecord}` : ''}`);
    } catch {
      setTold(`This browser does not let a page copy. Mark it here: ${text}`);
    }
  };
  return (
    <div class="actions">
      <p class="actions-row">
        <button type="button" disabled={whole === undefined} onClick={() => void copy(whole ?? '', 'Link')}>
          Copy link
        </button>
        <button
          type="button"
          disabled={whole === undefined}
          onClick={() =>
            void copy([noteOf(calculator, outcome, other, titles), whole ?? '', ...(hasRecord ? [withoutRecord] : [])].join('\n'), 'Note')
          }
        >
          Copy note
        </button>
        <button type="button" disabled={whole === undefined} onClick={() => window.print()}>
          Print
        </button>
        {calculator.hasCalendar && outcome.calendar.length > 0 && (
          <button type="button" disabled={whole === undefined} onClick={() => void saveCalendar(calculator, outcome)}>
            Dates for a calendar
          </button>
        )}
      </p>
      <p class="told" role="status">
        {told}
      </p>
      <div class="printed-link">
        {code && (
          <svg
            class="code"
            viewBox={`0 0 ${code.size} ${code.size}`}
            role="img"
            aria-label="Code to scan: opens this calculation"
            shape-rendering="crispEdges"
          >
            <path d={code.path} />
          </svg>
        )}
        {whole !== undefined && (
          <p>
            {hasRecord ? `Opens these answers. ${withoutRecord}` : 'Opens this calculation as it stands:'} {whole}
          </p>
        )}
      </div>
    </div>
  );
}
