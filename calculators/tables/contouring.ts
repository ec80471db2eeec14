/**
 * Practice factor P for working on the contour and for strips on the contour, by slope; each row reaches up to its own slope. Slope lengths and strip widths
 * beyond these void the factor. Recalled; the strip widths and the lowest factors were checked in other publications. Ground steeper than the last row gets
 * no factor. The 1997 revision replaced these with ridge height and storm; use them with the 1978 slope factor only.
 */
export const contouring = {
  source: 'wischmeier-smith-1978',
  where: 'tables 13 and 14',
  seen: 'memory',
  rows: [
    { toSlopePercent: 2, contourFactor: 0.6, lengthLimitFt: 400, stripFactor: 0.3, stripWidthFt: 130 },
    { toSlopePercent: 5, contourFactor: 0.5, lengthLimitFt: 300, stripFactor: 0.25, stripWidthFt: 100 },
    { toSlopePercent: 8, contourFactor: 0.5, lengthLimitFt: 200, stripFactor: 0.25, stripWidthFt: 100 },
    { toSlopePercent: 12, contourFactor: 0.6, lengthLimitFt: 120, stripFactor: 0.3, stripWidthFt: 80 },
    { toSlopePercent: 16, contourFactor: 0.7, lengthLimitFt: 80, stripFactor: 0.35, stripWidthFt: 80 },
    { toSlopePercent: 20, contourFactor: 0.8, lengthLimitFt: 60, stripFactor: 0.4, stripWidthFt: 60 },
    { toSlopePercent: 25, contourFactor: 0.9, lengthLimitFt: 50, stripFactor: 0.45, stripWidthFt: 50 },
  ],
} as const;
