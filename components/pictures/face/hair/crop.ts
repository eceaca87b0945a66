import type { Draw } from '#lib/quantities/seed.ts';
import { onCurve, polygonOf, reversed } from '../curve.ts';
import { closedPath, type Step } from '../path.ts';
import { scatter } from '../scatter.ts';
import { drawnCurve, stroked, type Layers } from '../shape.ts';
import { hairline, mass, outerEdge, type HairHead } from './hairHead.ts';

/** Hair cut close: a soft mass with short ticks; the hairline is broken up, never a wire. */
export function crop(head: HairHead, draw: Draw): Layers {
  const line = hairline(head);
  const outer = outerEdge(head, 2.5);
  const area = closedPath(outer, reversed(line));
  const ticks = scatter(polygonOf(outer, reversed(line)), 330, draw).flatMap(([x, v]): Step[] => {
    const length = 2 + 1.6 * draw();
    return [
      ['M', [x, v]],
      ['L', [x + length * 0.3 * (x / 60) + 0.4, v + length * (0.95 - Math.abs(x) / 140)]],
    ];
  });
  const edge = Array.from({ length: 80 }, (_, i): Step[] => {
    const [x, v] = onCurve(line, (i + 0.5 + 0.6 * (draw() - 0.5)) / 80);
    const length = 1.4 + 1.8 * draw();
    return [
      ['M', [x * 0.995, v - 0.5]],
      ['L', [x * 0.995 + length * 0.35 * (x / 60), v + length]],
    ];
  }).flat();
  return [
    mass(area),
    drawnCurve('hair', 'strand', outer, [0.3, 1, 0.3]),
    { ...stroked('hair', 'strand', ticks, 0.34), clip: area },
    stroked('hair', 'strand', edge, 0.3),
  ];
}
