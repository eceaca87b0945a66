/** CIE tristimulus values; a perfect diffuser has Y 100. */
export type Xyz = Readonly<{ x: number; y: number; z: number }>;
/** CIELAB: lightness 0 to 100, a towards red, b towards yellow. */
export type Lab = Readonly<{ l: number; a: number; b: number }>;

const delta = 6 / 29;

/** The cube root, and a straight line near black (CIE 015:2018, 8.2.1). */
function compressed(ratio: number): number {
  return ratio > delta ** 3 ? Math.cbrt(ratio) : ratio / (3 * delta * delta) + 4 / 29;
}

function expanded(root: number): number {
  return root > delta ? root ** 3 : 3 * delta * delta * (root - 4 / 29);
}

/** XYZ to CIELAB for a white of the same lamp. The white itself gives exactly L* 100, a* 0, b* 0. */
export function xyzToLab({ x, y, z }: Xyz, white: Xyz): Lab {
  const [fx, fy, fz] = [compressed(x / white.x), compressed(y / white.y), compressed(z / white.z)];
  return { l: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/** CIELAB back to XYZ. */
export function labToXyz({ l, a, b }: Lab, white: Xyz): Xyz {
  const fy = (l + 16) / 116;
  return {
    x: white.x * expanded(fy + a / 500),
    y: white.y * expanded(fy),
    z: white.z * expanded(fy - b / 200),
  };
}
