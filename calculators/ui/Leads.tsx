import type { Led } from '../kit/leads.ts';

interface LeadsProps {
  readonly leads: readonly Led[];
  /** The whole address of what a lead goes to. */
  readonly addressOf: (led: Led) => string;
}

/** What people ask next, each with the figures that stand here. */
export function Leads({ leads, addressOf }: LeadsProps) {
  return (
    <section class="leads">
      <h2>What next</h2>
      <ul>
        {leads.map((led) => (
          <li key={led.says}>
            <a href={addressOf(led)}>
              <span>
                {led.says}
                {led.leftOut.length > 0 && (
                  <span class="leads-left-out">
                    That form has no such kind as {led.leftOut.map((name) => `“${name}”`).join(', ')}: add them there by hand.
                  </span>
                )}
              </span>
              <svg viewBox="0 0 30 20" width="30" height="20" aria-hidden="true">
                <path d="M1 10h26M19 2l8 8-8 8" />
              </svg>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
