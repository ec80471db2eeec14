type Way = 'clips' | 'height-clips' | 'height-known' | 'height-stand' | 'plate';

/** Ways in which the place is known by heights; the others weigh it, or read a plate that clips have set. */
export const isByHeight = (way: Way): boolean => way === 'height-clips' || way === 'height-known' || way === 'height-stand';
/** Ways that need a frame and a scale. */
export const isClipping = (way: Way): boolean => way === 'clips' || way === 'height-clips' || way === 'plate';
