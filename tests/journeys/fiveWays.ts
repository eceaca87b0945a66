import type { Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { calculators } from '#calculators/index.ts';
import type { Value } from '#calculators/spec.ts';
import {
  type AnyField,
  backToStart,
  changed,
  countOf,
  focusOn,
  gripKeys,
  gripPlace,
  pickMark,
  pressSteps,
  sliders,
  stepButtons,
  typeInto,
  unfold,
} from './movable.ts';
import { bringToTop, placesOf, standStill, wake } from './onPage.ts';
import { bySeed, isWhole, oneOf, partOf } from '#tests/tools/share.ts';
import { type BrowserName, browserNames } from '#tests/tools/openBrowser.ts';
import { slackMm, withBrowsers } from './withBrowsers.ts';

const every = Object.values(calculators).map(({ id, fields }) => ({
  id,
  fields: Object.values<AnyField>(fields),
}));

/**
 * How far a mark of two numbers is moved, tenths of a millimetre across and down; a number in the picture by
 * so many steps.
 */
const [across, down, along] = [11, 3, 5];

const pointOf = (value: Value | undefined) =>
  typeof value === 'object' ? value : { xMm: Number(value), yMm: 0 };
function apart(one: Value | undefined, other: Value | undefined): number {
  const [a, b] = [pointOf(one), pointOf(other)];
  return Math.max(Math.abs(a.xMm - b.xMm), Math.abs(a.yMm - b.yMm));
}
const rounded = (value: number, decimals = 1) => Number(value.toFixed(decimals));
const inWords = (value: number, decimals: number) => value.toFixed(decimals).replace('.', ',');

/**
 * Where the arrow keys should bring a field, as far as its spec can say: a share moves by millimetres, not by
 * its own unit.
 */
function keyedTo({ start, control }: AnyField): Value | undefined {
  if (control.kind === 'mark')
    return {
      xMm: rounded(pointOf(start).xMm + across / 10),
      yMm: rounded(pointOf(start).yMm - down / 10),
    };
  return control.kind === 'number' && control.unit !== '%' ? rounded(Number(start) + along / 10) : undefined;
}

async function pressKeys(page: Page, { key, control }: AnyField): Promise<void> {
  expect(await focusOn(page, '.calculator .handle'), `${key}: its handle takes the focus`).toBe(true);
  const press = async (arrow: 'ArrowRight' | 'ArrowDown' | 'ArrowUp', times: number) => {
    for (let i = 0; i < times; i++) await page.keyboard.press(arrow);
  };
  if (control.kind === 'mark') {
    await page.keyboard.down('Shift');
    await press('ArrowRight', Math.floor(across / 10));
    await page.keyboard.up('Shift');
    await press('ArrowRight', across % 10);
    await press('ArrowDown', down);
  } else {
    // It lies on a line across or up, and the other arrow does nothing.
    await press('ArrowRight', along);
    await press('ArrowUp', along);
  }
}

/** Moves one mark in five ways, each from the start: one address. */
async function fiveWays(
  page: Page,
  id: string,
  fields: readonly AnyField[],
  field: AnyField,
  slack: (way: string) => number,
): Promise<void> {
  const { key, control, start } = field;
  expect(await pickMark(page, key), `${key} can be chosen without a pointer`).toBe(true);
  const from = await gripPlace(page, key);
  const wanted = keyedTo(field);
  await pressKeys(page, field);
  let before: Value | undefined;
  const keyed = await changed(page, fields, ({ [key]: now }) => {
    const isThere = now !== undefined && (wanted === undefined ? now === before : apart(now, wanted) === 0);
    before = now;
    return isThere;
  });
  const to = keyed[key];
  expect(keyed, `${key}, by arrow keys`).toEqual({ [key]: wanted ?? to });
  expect(apart(to, start), `${key} is moved by arrow keys`).toBeGreaterThan(0);
  const end = await gripPlace(page, key);
  await backToStart(page);

  const screen = await placesOf(page, from, end);
  const perMm = apart(to, start) / apart(end, from);
  const halfStep = control.kind === 'number' ? 10 ** -control.decimals / 2 : 0;
  const ways: Readonly<Record<string, () => Promise<void>>> = {
    drag: async () => {
      await page.mouse.move(screen.start.left, screen.start.top);
      await page.mouse.down();
      await page.mouse.move(
        (screen.start.left + screen.end.left) / 2,
        (screen.start.top + screen.end.top) / 2,
      );
      await page.mouse.move(screen.end.left, screen.end.top);
      await page.mouse.up();
    },
    tap: async () => {
      await page.mouse.click(screen.start.left, screen.start.top);
      await page.mouse.click(screen.end.left, screen.end.top);
    },
    buttons: () =>
      pressSteps(
        page,
        control.kind === 'mark'
          ? [...Array<number>(across).fill(1), ...Array<number>(down).fill(3)]
          : Array<number>(along).fill(1),
      ),
    typed: async () => {
      const { xMm, yMm } = pointOf(to);
      const texts =
        control.kind === 'mark' ? { x: xMm.toFixed(1), y: inWords(yMm, 1) } : { [key]: inWords(xMm, 1) };
      for (const [box, text] of Object.entries(texts))
        expect(await typeInto(page, `#${id}-${box}`, text), `${key} has a box to type in`).toBe(true);
    },
  };
  for (const [way, move] of Object.entries(ways)) {
    await move();
    const most = slack(way) * perMm + (control.kind === 'number' && slack(way) > halfStep ? halfStep : 0);
    const values = await changed(
      page,
      fields,
      ({ [key]: now, ...others }) =>
        now !== undefined && apart(now, to) <= most && Object.keys(others).length === 0,
    );
    expect(Object.keys(values), `${key}, ${way}: what changed`).toEqual([key]);
    expect(
      apart(values[key], to),
      `${key}, ${way}: ${JSON.stringify(values[key])}, not ${JSON.stringify(to)}`,
    ).toBeLessThanOrEqual(most);
    await backToStart(page);
  }
}

/**
 * One step off the start, inside the field's limits; the second step is for a link that shows the field's
 * box.
 */
function stepped({ start, control }: AnyField, steps: 1 | 2): number | undefined {
  if (control.kind !== 'number') return undefined;
  const way = Number(start) + control.step > control.hi ? -1 : 1;
  return rounded(Number(start) + way * steps * control.step, control.decimals);
}

/**
 * Every number typed one step off: the address holds them all. A box that only some answer shows, or only a
 * link that holds its number, is shown first.
 */
async function typeNumbers(page: Page, id: string, fields: readonly AnyField[]): Promise<void> {
  let left = fields.filter(({ control }) => control.kind === 'number');
  let wanted: Record<string, Value> = {};
  const typeShown = async () => {
    const before = left.length;
    const hidden: AnyField[] = [];
    for (const field of left) {
      const to = stepped(field, 1);
      const decimals = field.control.kind === 'number' ? field.control.decimals : 0;
      if (to !== undefined && (await typeInto(page, `#${id}-${field.key}`, inWords(to, decimals))))
        wanted[field.key] = to;
      else hidden.push(field);
    }
    left = hidden;
    return left.length < before;
  };
  const check = async () => {
    expect(
      await changed(page, fields, (now) => Object.entries(wanted).every(([key, to]) => now[key] === to)),
    ).toEqual(wanted);
    await backToStart(page);
  };
  await typeShown();
  for (const { key, control, start } of fields) {
    for (const option of control.kind === 'choice' && left.length > 0
      ? control.options.filter((each) => each !== start)
      : []) {
      await page.select(`#${id}-${key}`, option);
      if (await typeShown()) wanted[key] = option;
      else await page.select(`#${id}-${key}`, String(wanted[key] ?? start));
    }
  }
  await check();
  if (left.length === 0) return;
  await page.goto(
    `${page.url()}?${new URLSearchParams(left.map((field) => [field.key, String(stepped(field, 2))]))}`,
  );
  await wake(page, '.calculator .says');
  await unfold(page);
  for (const { key } of left) await page.waitForSelector(`#${id}-${key}`);
  wanted = {};
  await typeShown();
  expect(
    left.map(({ key }) => key),
    'numbers without a box',
  ).toEqual([]);
  await check();
}

/** What slides by arrow keys or steps by buttons: the numbers it gives, typed, give the same address. */
async function slideAndStep(
  page: Page,
  id: string,
  fields: readonly AnyField[],
  steppers: number,
): Promise<void> {
  const slide = async (nth: number) => {
    expect(await focusOn(page, sliders, nth)).toBe(true);
    const isAtItsEnd = await page.$$eval(
      sliders,
      (all, which) => all[which] instanceof HTMLInputElement && all[which].value === all[which].max,
      nth,
    );
    await page.keyboard.press(isAtItsEnd ? 'ArrowLeft' : 'ArrowRight');
  };
  const moves = [
    ...Array.from({ length: await countOf(page, sliders) }, (_, nth) => ({
      what: `slide ${nth + 1}`,
      move: () => slide(nth),
    })),
    ...Array.from({ length: steppers }, (_, nth) => ({
      what: `step button ${nth + 1}`,
      move: () => pressSteps(page, [nth]),
    })),
  ];
  for (const { what, move } of moves) {
    await move();
    const values = await changed(page, fields, (now) => Object.keys(now).length > 0);
    expect(Object.keys(values).length, `${what} moves a number`).toBeGreaterThan(0);
    await backToStart(page);
    for (const [key, value] of Object.entries(values))
      expect(await typeInto(page, `#${id}-${key}`, String(value)), `${key} has a box to type in`).toBe(true);
    const typed = await changed(page, fields, (now) =>
      Object.entries(values).every(([key, value]) => now[key] === value),
    );
    expect(typed, `${what}, then typed`).toEqual(values);
    await backToStart(page);
  }
}

/**
 * Marks that a run leaves out. Each move of a mark of “Cover the old shape” asks the planner, and its twenty
 * marks are two outlines of two mirrored brows, all made by one list: of each outline three marks of one brow
 * and one of the other are moved, by the seed.
 */
function farMarks(id: string, fields: readonly AnyField[]): readonly AnyField[] {
  if (isWhole || id !== 'cover-the-old-shape') return [];
  const outlines = ['planned', 'old'].map((shape) => fields.filter(({ key }) => key.startsWith(shape)));
  const chosen = new Set(
    outlines.flatMap((marks, nth) => {
      const side = oneOf(['R', 'L'], `side ${nth}`) ?? 'R';
      const near = marks.filter(({ key }) => key.endsWith(side));
      const ofPart = (part: RegExp) =>
        oneOf(
          near.filter(({ key }) => part.test(key)),
          `${part} ${nth}`,
        ) ?? [];
      return [
        ofPart(/Front/),
        ofPart(/Arch/),
        ofPart(/Tail/),
        oneOf(
          marks.filter(({ key }) => !key.endsWith(side)),
          `other side ${nth}`,
        ) ?? [],
      ].flat();
    }),
  );
  if (chosen.size !== 8) throw new Error(`${chosen.size} marks were chosen of ${fields.length}.`);
  return fields.filter((field) => !chosen.has(field));
}

/**
 * Drives the calculators that fall to one browser: each is driven in one or the other every second day, by turns
 * of the seed. A file for
 * each browser: two workers share them.
 */
export const fiveWaysIn = (browser: BrowserName): void =>
  withBrowsers(
    'five ways to move a mark',
    ({ open, site, name }) => {
      let shared: ReturnType<typeof open> | undefined;
      test.each(partOf(every, browserNames.indexOf(browser), 4))(
        `[hand] $id: marks dragged, tapped, by arrow keys, by buttons and typed, numbers typed, slid and stepped: one address${bySeed}`,
        async ({ id, fields }) => {
          const { page, faults } = await (shared ??= open(1280, 1000));
          await page.goto(`${site().origin}/calculators/${id}/`);
          await wake(page, '.calculator .says');
          await unfold(page);
          const island = await page.$eval('.calculator', (calculator) => calculator.id);
          expect(await changed(page, fields, () => true)).toEqual({});
          const grips = await gripKeys(page);
          const inPicture = fields.filter(
            ({ key, control }) => control.kind === 'mark' || grips.includes(key),
          );
          if (inPicture.length > 0) {
            await bringToTop(page, '.stage');
            await standStill(page);
          }
          const far = farMarks(id, inPicture);
          for (const field of inPicture.filter((each) => !far.includes(each)))
            await fiveWays(page, island, fields, field, (way) => slackMm(name, way));
          await typeNumbers(page, island, fields);
          await slideAndStep(
            page,
            island,
            fields,
            inPicture.length > 0 ? 0 : await countOf(page, stepButtons),
          );
          expect(faults.splice(0)).toEqual([]);
        },
      );
    },
    [browser],
  );
