/**
 * The library's entry for use from outside, by subject. The site's own parts import the modules themselves.
 * Points are in the picture's frame (x to the client's left, y up) or in the face's; lengths are in
 * millimetres, angles in degrees, shares from 0 to 1, colours L*a*b* under D65 where nothing else is said.
 * Left and right are the client's.
 *
 * Every argument is checked here once, against ranges so wide that beyond them a number has the wrong unit or
 * sign (entry/).
 * A function whose result has an `ok` then answers `{ ok: false, reason: 'argument-not-accepted', at, must
 * }`, beside its own reasons. A function whose result is a bare value throws a RangeError with the same in a
 * sentence: such a call is a fault of the program. Nothing answers NaN.
 */
export * from './entry/ground.ts';
export * from './entry/mapping.ts';
export * from './entry/measuring.ts';
export * from './entry/brow.ts';
export * from './entry/placing.ts';
export * from './entry/plan.ts';
export * from './entry/face.ts';
export * from './entry/light.ts';
export * from './entry/bottle.ts';
export * from './entry/coverage.ts';
export * from './entry/colour.ts';
export * from './entry/why.ts';
export * from './entry/recipe.ts';
