import type { PlaceView, View } from './view.ts';

/** Saves a place as a file, wherever it is told that this is due. */
export const SaveButton = ({ view, place }: { readonly view: View; readonly place: PlaceView['place'] }) => (
  <button type="button" onClick={() => void import('./saveFile.ts').then(({ saveFile }) => saveFile(view, [place]))}>
    Save the file
  </button>
);
