/**
 * The part of a sheet that every printer reaches on A4 and on Letter alike. The sheet's root is clipped to
 * it: whatever is wider makes a browser shrink the whole page.
 */
export const sheetWidthMm = 190;
/**
 * The true-size drawing: bars along its top and right, the picture in between. High enough for the tallest
 * picture on the worst printer that is still corrected.
 */
export const drawingHeightMm = 204;
/** Where the picture begins: below the bar across. */
export const pictureTopMm = 11;
/** Where the upright bar stands. */
export const uprightMm = 184;
