/** Was it cut at the stubble, so that what lies below was never measured? */
export const isCutHigh = ({ way, clippedTo }: { readonly way: Way; readonly clippedTo: 'not-sure' | 'ground' | 'stubble' }): boolean =>
  !isByHeight(way) && clippedTo === 'stubble';
/** Does the answer turn on where the cut was, and nobody has said? */
export const isCutUnsaid = ({ way, clippedTo }: { readonly way: Way; readonly clippedTo: 'not-sure' | 'ground' | 'stubble' }): boolean =>
  !isByHeight(way) && clippedTo === 'not-sure';

type Way = 'clips' | 'height-clips' | 'height-known' | 'height-stand' | 'plate';

/** Ways in which the place is known by heights; the others weigh it, or read a plate that clips have set. */
export const isByHeight = (way: Way): boolean => way === 'height-clips' || way === 'height-known' || way === 'height-stand';
/** Ways that need a frame and a scale. */
export const isClipping = (way: Way): boolean => way === 'clips' || way === 'height-clips' || way === 'plate';
