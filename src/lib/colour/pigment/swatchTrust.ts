import type { Lab } from '../spaces/lab.ts';
import { labToLch } from '../spaces/lch.ts';

/**
 * How far a smooth spectrum may stand in for a pigment that was only seen as a colour.
 * `earth-like`: browns, reds, yellows, greys and blacks, as of iron oxides and carbon. `not-tested`: no
 * measured powder of this hue was at hand. `blue-or-violet`: measured to be wrong.
 */
export type SwatchTrust = 'earth-like' | 'not-tested' | 'blue-or-violet';

/** Below this chroma a colour counts as a grey, whatever its hue. */
const greyBelow = 3;
/** Hue angles of the measured earths reach from 14° to 73°, and their white has 104°. */
const earthFromDeg = 10;
const earthToDeg = 110;
/** The measured earths reach chroma 40. Purer colours belong to other pigments. */
const earthChroma = 45;
const blueFromDeg = 190;
const blueToDeg = 345;

/**
 * Where the smooth spectrum of a swatch is a good guess. On thirteen measured powders, mixed with the base
 * pigments or laid in five skins, earths stayed within 1.1 ΔE00 of the truth, and so nearly did every grey
 * that hides some ultramarine (1.3); ultramarine and what looks like it went to 6.
 */
export function swatchTrust(lab: Lab): SwatchTrust {
  const { c, hDeg } = labToLch(lab);
  if (c < greyBelow) return 'earth-like';
  if (hDeg >= blueFromDeg && hDeg <= blueToDeg) return 'blue-or-violet';
  return hDeg >= earthFromDeg && hDeg <= earthToDeg && c <= earthChroma ? 'earth-like' : 'not-tested';
}
