import type { VNode } from 'preact';

/** The mark of what came from there, with what must be told beside it: `from your place, slip of Jun 3, 2026`. */
export const fromPlace = (says: string | undefined): VNode => <span class="from-place">from your place{says !== undefined && `, ${says}`}</span>;
