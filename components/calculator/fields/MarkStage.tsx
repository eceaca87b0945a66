import type { PointMm } from '#lib/geometry/point.ts';
import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';

export type View = Readonly<{ x: number; y: number; width: number; height: number }>;

type Props = Readonly<{
  view: View;
  label: string;
  /** Marks that can be moved, in reading order. */
  marks: readonly Readonly<{ key: string; point: PointMm }>[];
  active: string;
  /** What a screen reader hears at the active mark: its name and both numbers. */
  activeLabel: string;
  onPick: (key: string) => void;
  onMove: (key: string, to: PointMm) => void;
  /** The drawing, in picture millimetres with y down. */
  children: ComponentChildren;
}>;

const reachPx = 24;
const stepMm = 0.1;
const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/**
 * The picture whose marks can be moved: drag one, or tap it and then tap its new place, or use the arrow
 * keys.
 * The nearest mark within a finger's reach answers, so marks may stand closer together than two fingertips.
 */
export function MarkStage({ view, label, marks, active, activeLabel, onPick, onMove, children }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  /**
   * The mark under the pointer: by how much it was missed, whether it was picked before, whether it has
   * moved.
   */
  const held = useRef<
    { key: string; missX: number; missY: number; wasPicked: boolean; hasMoved: boolean } | undefined
  >(undefined);
  const picked = useRef(false);

  const place = (event: PointerEvent): { point: PointMm; pxPerMm: number } | undefined => {
    const matrix = svg.current?.getScreenCTM();
    if (!matrix) return undefined;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    return { point: { xMm: x, yMm: -y }, pxPerMm: matrix.a };
  };

  const nearest = ({ point, pxPerMm }: { point: PointMm; pxPerMm: number }) => {
    const reachMm = reachPx / pxPerMm;
    let best: { key: string; away: number } | undefined;
    for (const { key, point: at } of marks) {
      const away = Math.hypot(at.xMm - point.xMm, at.yMm - point.yMm);
      if (away <= reachMm && (!best || away < best.away)) best = { key, away };
    }
    return best?.key;
  };

  const down = (event: PointerEvent) => {
    const here = place(event);
    if (!here || event.button > 0) return;
    const key = nearest(here);
    if (key === undefined) {
      if (picked.current) onMove(active, here.point);
      return;
    }
    const at = marks.find((mark) => mark.key === key)?.point ?? here.point;
    held.current = {
      key,
      missX: at.xMm - here.point.xMm,
      missY: at.yMm - here.point.yMm,
      wasPicked: picked.current && key === active,
      hasMoved: false,
    };
    onPick(key);
    picked.current = true;
    svg.current?.setPointerCapture(event.pointerId);
  };

  const move = (event: PointerEvent) => {
    const here = held.current && event.buttons > 0 ? place(event) : undefined;
    if (!here || !held.current) return;
    held.current.hasMoved = true;
    onMove(held.current.key, {
      xMm: here.point.xMm + held.current.missX,
      yMm: here.point.yMm + held.current.missY,
    });
  };

  const up = (event: PointerEvent) => {
    const here = held.current?.wasPicked && !held.current.hasMoved ? place(event) : undefined;
    if (here) onMove(active, here.point);
    held.current = undefined;
  };

  const key = (event: KeyboardEvent) => {
    const arrow = arrows[event.key];
    const at = marks.find((mark) => mark.key === active)?.point;
    if (!arrow || !at) return;
    event.preventDefault();
    const by = stepMm * (event.shiftKey ? 10 : 1);
    onMove(active, { xMm: at.xMm + arrow[0] * by, yMm: at.yMm + arrow[1] * by });
  };

  const at = marks.find((mark) => mark.key === active)?.point;
  return (
    <svg
      ref={svg}
      class="plot map stage"
      viewBox={`${view.x} ${view.y} ${view.width} ${view.height}`}
      role="group"
      aria-label={label}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={() => (held.current = undefined)}
    >
      {children}
      {marks.map((mark) => (
        <circle
          key={mark.key}
          class="grip"
          data-mark={mark.key}
          cx={mark.point.xMm}
          cy={-mark.point.yMm}
          r="4"
        />
      ))}
      {at && (
        <g class="handle" tabindex={0} role="button" aria-label={activeLabel} onKeyDown={key}>
          <circle cx={at.xMm} cy={-at.yMm} r="2.7" />
          <path d={`M${at.xMm - 5},${-at.yMm}h2.3m5.4,0h2.3M${at.xMm},${-at.yMm - 5}v2.3m0,5.4v2.3`} />
        </g>
      )}
    </svg>
  );
}
