import type { Trouble } from './session.ts';

const says: Readonly<Record<Trouble, string>> = {
  gone: 'was taken away in another window. What you see here is no longer kept.',
  newer: 'was changed by a newer copy of these pages. Your changes here are not kept; nothing there was written over.',
  damaged: 'cannot be read any more where it lies. Your changes here are not kept; nothing there was written over.',
};
/** Something is wrong with the record that is at work. */
export const Troubled = ({ trouble, what }: { readonly trouble: Trouble | undefined; readonly what: string }) =>
  trouble === undefined ? null : (
    <div class="place-bar" role="alert">
      <p>
        <b>
          {what} {says[trouble]}
        </b>
      </p>
    </div>
  );
