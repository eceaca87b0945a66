/**
 * A point in the picture's frame, millimetres: x to the picture's right (towards the client's left), y up.
 */
export type PointMm = Readonly<{ xMm: number; yMm: number }>;
