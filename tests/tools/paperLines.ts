import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseFragment, type DefaultTreeAdapterTypes } from 'parse5';

type Node = DefaultTreeAdapterTypes.Node;
type Matrix = readonly [number, number, number, number, number, number];

/** A place on the paper, millimetres from its upper left corner. */
export type OnPaper = Readonly<{ x: number; y: number }>;
/** One drawn path: its pieces, each a row of places; handles of curves are among them. */
export type PaperPath = readonly (readonly OnPaper[])[];
export type PrintedPage = Readonly<{ widthMm: number; heightMm: number; paths: readonly PaperPath[] }>;

const pointMm = 25.4 / 72;
const still: Matrix = [1, 0, 0, 1, 0, 0];

function matrixOf(text: string | undefined): Matrix {
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = (/matrix\(([^)]*)\)/.exec(text ?? '')?.[1] ?? '')
    .split(/[\s,]+/)
    .filter(Boolean)
    .map(Number);
  return [a, b, c, d, e, f];
}

/** First the inner one, then the outer. */
function joined([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix {
  return [a * A + c * B, b * A + d * B, a * C + c * D, b * C + d * D, a * E + c * F + e, b * E + d * F + f];
}

/** The converter writes absolute M, L, C and Z only. */
function piecesOf(d: string, [a, b, c, e, x0, y0]: Matrix): PaperPath {
  return d
    .split(/(?=M)/)
    .map((piece) => {
      const numbers = [...piece.matchAll(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g)].map(Number);
      return Array.from({ length: Math.floor(numbers.length / 2) }, (_, i) => {
        const [x = 0, y = 0] = [numbers[2 * i], numbers[2 * i + 1]];
        return { x: (a * x + c * y + x0) * pointMm, y: (b * x + e * y + y0) * pointMm };
      });
    })
    .filter((piece) => piece.length > 0);
}

function* pathsUnder(node: Node, outer: Matrix): Generator<PaperPath> {
  if (!('childNodes' in node)) return;
  for (const child of node.childNodes) {
    if (!('tagName' in child) || child.tagName === 'defs' || child.tagName === 'clippath') continue;
    const attribute = (name: string) => child.attrs.find((each) => each.name === name)?.value;
    const here = joined(outer, matrixOf(attribute('transform')));
    if (child.tagName === 'path') yield piecesOf(attribute('d') ?? '', here);
    else yield* pathsUnder(child, here);
  }
}

/**
 * One page of a PDF as lines on paper. The reader of the paper is the one the tests install for words: its
 * sister program writes shapes.
 */
export function printedPage(pdf: Uint8Array, page: number): PrintedPage {
  const folder = mkdtempSync(join(tmpdir(), 'paper-'));
  try {
    writeFileSync(join(folder, 'sheet.pdf'), pdf);
    execFileSync('pdftocairo', [
      '-svg',
      '-f',
      String(page),
      '-l',
      String(page),
      join(folder, 'sheet.pdf'),
      join(folder, 'sheet.svg'),
    ]);
    const text = readFileSync(join(folder, 'sheet.svg'), 'utf8');
    const [, width = 0, height = 0] = (/viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(text) ?? []).map(Number);
    return {
      widthMm: width * pointMm,
      heightMm: height * pointMm,
      paths: [...pathsUnder(parseFragment(text), still)],
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const near = (one: number, other: number, slack = 0.02): boolean => Math.abs(one - other) < slack;

/** A printed scale bar: the places of its 21 strokes along it, from its 0. */
export type PrintedBar = Readonly<{ axis: 'across' | 'up'; strokesMm: readonly number[] }>;

/**
 * Finds the scale bars by their shape alone, whatever their size: one straight line, then 21 strokes that
 * start on it, square to it.
 */
export function barsOn({ paths }: PrintedPage): readonly PrintedBar[] {
  return paths.flatMap((path): readonly PrintedBar[] => {
    const [line, ...strokes] = path;
    const [from, to] = line ?? [];
    if (
      !from ||
      !to ||
      line?.length !== 2 ||
      strokes.length !== 21 ||
      !strokes.every((stroke) => stroke.length === 2)
    )
      return [];
    const axis = near(from.y, to.y) ? 'across' : near(from.x, to.x) ? 'up' : undefined;
    if (!axis) return [];
    const along = ({ x, y }: OnPaper) => Math.abs(axis === 'across' ? x - from.x : y - from.y);
    const off = ({ x, y }: OnPaper) => (axis === 'across' ? y - from.y : x - from.x);
    const starts = strokes.map(([start = from, end = from]) => ({ start, end }));
    if (!starts.every(({ start, end }) => near(off(start), 0) && near(along(start), along(end)))) return [];
    return [{ axis, strokesMm: starts.map(({ start }) => along(start)) }];
  });
}

/**
 * Finds the crosses of marks by their shape: two straight lines of one length, the first flat, the second
 * upright, through one middle.
 */
export function crossesOn({ paths }: PrintedPage): readonly OnPaper[] {
  return paths.flatMap((path) => {
    const [flat, upright, rest] = path;
    const [a, b] = flat ?? [];
    const [c, d] = upright ?? [];
    if (rest || !a || !b || !c || !d || flat?.length !== 2 || upright?.length !== 2) return [];
    const middle = { x: (a.x + b.x) / 2, y: (c.y + d.y) / 2 };
    return near(a.y, b.y) &&
      near(c.x, d.x) &&
      near(c.x, middle.x, 0.05) &&
      near(a.y, middle.y, 0.05) &&
      near(Math.abs(b.x - a.x), Math.abs(d.y - c.y), 0.3)
      ? [middle]
      : [];
  });
}

/** The words of each page. */
export function pagesOf(pdf: Uint8Array): readonly string[] {
  return execFileSync('pdftotext', ['-layout', '-', '-'], { input: pdf, encoding: 'utf8' })
    .split('\f')
    .slice(0, -1);
}
