/** Does this browser keep each page of a disk apart, or has nobody found out yet? The folder's first script leaves there what it knows. */
export const partsPages = (): boolean => location.protocol === 'file:' && document.documentElement.dataset['keeps'] !== 'together';
