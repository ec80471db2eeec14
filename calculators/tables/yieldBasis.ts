/** Dry matter in a pound of yield as it is told, percent: soil surveys and range guides mostly print air-dry pounds (common practice). */
export const yieldBasisPercents = { 'air-dry': 90, 'oven-dry': 100 } as const;
