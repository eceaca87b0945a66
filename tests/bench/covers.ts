import { coverTheOldShape } from '#calculators/coverTheOldShape.ts';
import { readFace } from '#lib/mapping/compare/readFace.ts';
import { drawFrom } from '#lib/quantities/seed.ts';
import { choices, noisy, symmetricFace } from '../lib/mapping/faces.ts';
import { drawnState } from '../specs/coverStates.ts';

/** Answers of “Cover of the old shape” to sixty states. */
export const states = Array.from({ length: 60 }, (_, seed) => drawnState(seed, 'bench'));
export const answer = (state: (typeof states)[number]) => coverTheOldShape.solve(state);

const faces = Array.from({ length: 60 }, (_, seed) => noisy(symmetricFace(seed), 0.36, drawFrom(seed)));
/** What their time is counted in: sixty readings of a face. */
export const readings = () => faces.forEach((face) => readFace(face, choices));
