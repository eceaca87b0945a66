import type { PointMm } from '#lib/geometry/point.ts';
import { useEffect, useRef } from 'preact/hooks';
import type { Hold } from './useSteps.ts';

/** How near a press must be to a mark to take it, screen pixels. */
const reachPx = 22;
/** Along the right edge a finger takes no mark, so that there is always a place to scroll by. */
const stripPx = 28;
/** So far may a finger slip and still have tapped, screen pixels, on a mark and beside; a mouse does not slip. */
const slipPx = { on: 6, beside: 10 } as const;

type Mark = Readonly<{ key: string; point: PointMm }>;
type Asked = Readonly<{
  marks: readonly Mark[];
  active: string;
  hold: Hold;
  onPick: (key: string) => void;
  onMove: (key: string, to: PointMm) => void;
}>;
/** A press that has not ended. Without a mark it may still turn out to be a tap beside all of them. */
type Press = Readonly<{ x: number; y: number; slip: number }> & {
  mark: Mark | undefined;
  miss: PointMm;
  isTap: boolean;
  wasChosen: boolean;
};

/**
 * The pointer on a picture of marks. A press near a mark takes the nearest, which then follows the pointer; a
 * tap on one chooses it, and a second tap says where it goes. All else is left to the page: a finger scrolls.
 */
export function useGrip(asked: Asked) {
  const svg = useRef<SVGSVGElement>(null);
  const press = useRef<Press>();
  /** The mark that was tapped and waits for its place. */
  const chosen = useRef('');
  const latest = useRef(asked);
  latest.current = asked;

  const place = (x: number, y: number): PointMm & { pxPerMm: number } => {
    const matrix = svg.current?.getScreenCTM();
    const at = new DOMPoint(x, y).matrixTransform(matrix?.inverse());
    return { xMm: at.x, yMm: -at.y, pxPerMm: matrix?.a ?? 1 };
  };
  const nearest = (x: number, y: number, isFinger: boolean): Mark | undefined => {
    const right = svg.current?.getBoundingClientRect().right ?? 0;
    if (isFinger && x > right - stripPx) return undefined;
    const here = place(x, y);
    let best: Mark | undefined;
    let awayMm = reachPx / here.pxPerMm;
    for (const mark of latest.current.marks) {
      const mm = Math.hypot(mark.point.xMm - here.xMm, mark.point.yMm - here.yMm);
      if (mm <= awayMm) [best, awayMm] = [mark, mm];
    }
    return best;
  };

  // A browser starts to scroll unless the first touch is refused, and it asks nobody later. What a style says
  // of shapes inside a drawing it does not heed.
  useEffect(() => {
    const drawing = svg.current;
    const refuse = (event: TouchEvent) => {
      const [touch] = event.touches;
      if (touch && event.touches.length === 1 && nearest(touch.clientX, touch.clientY, true))
        event.preventDefault();
    };
    drawing?.addEventListener('touchstart', refuse, { passive: false });
    return () => drawing?.removeEventListener('touchstart', refuse);
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- it reads what was asked last.
  }, []);

  const breakOff = () => {
    if (press.current?.mark && !press.current.isTap) asked.hold.putBack();
    press.current = undefined;
  };
  const onPointerDown = (event: PointerEvent) => {
    // A second finger: the first one was not meant for a mark.
    if (!event.isPrimary) return breakOff();
    if (event.button > 0) return;
    const { clientX: x, clientY: y } = event;
    const isFinger = event.pointerType === 'touch';
    const mark = nearest(x, y, isFinger);
    const here = place(x, y);
    press.current = {
      x,
      y,
      slip: isFinger ? slipPx[mark ? 'on' : 'beside'] : 0,
      miss: mark ? { xMm: mark.point.xMm - here.xMm, yMm: mark.point.yMm - here.yMm } : { xMm: 0, yMm: 0 },
      isTap: true,
      wasChosen: mark?.key === chosen.current,
      mark,
    };
    if (!mark) return;
    asked.hold.take();
    asked.onPick(mark.key);
    svg.current?.setPointerCapture(event.pointerId);
  };
  const onPointerMove = ({ clientX: x, clientY: y, isPrimary }: PointerEvent) => {
    const held = press.current;
    if (!held || !isPrimary) return;
    if (held.isTap && Math.hypot(x - held.x, y - held.y) <= held.slip) return;
    held.isTap = false;
    if (!held.mark) return;
    const here = place(x, y);
    asked.onMove(held.mark.key, { xMm: here.xMm + held.miss.xMm, yMm: here.yMm + held.miss.yMm });
  };
  const onPointerUp = ({ clientX: x, clientY: y }: PointerEvent) => {
    const ended = press.current;
    press.current = undefined;
    if (!ended) return;
    const isPlace = ended.isTap && chosen.current !== '' && (!ended.mark || ended.wasChosen);
    if (isPlace) {
      asked.hold.take();
      asked.onMove(chosen.current, place(x, y));
    }
    if (ended.isTap || ended.mark) chosen.current = ended.isTap && !isPlace ? (ended.mark?.key ?? '') : '';
    asked.hold.letGo();
  };
  return { svg, on: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: breakOff } };
}
