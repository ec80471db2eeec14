// The kinds of what belongs to a place, for what fetches them late: views that draw one of them import it from its own file.
export { rowKind } from './rowKind.ts';
export { noteKind, photoKind, resultKind, visitKind } from './visitKinds.ts';
