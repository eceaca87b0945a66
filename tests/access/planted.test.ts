import { expect, type Page } from '@playwright/test';
import { lookThrough } from './lookThrough.ts';
import { test } from './oneTab.ts';
import { offPaper, markLines, paperPx } from './paper.ts';
import { cutOff, spaceText, stickingOut, tooSmall } from './shape.ts';

// Faults put on a small page one by one: the looks that leave out what cannot differ must still find each.

const sound =
  '<!doctype html><html lang="en"><head><title>One</title></head><body><main><h1>One</h1><p>Words of a page that is sound.</p>BODY</main></body></html>';

async function plant(page: Page, body: string, style = ''): Promise<void> {
  await page.goto('about:blank');
  await page.setViewportSize({ width: 320, height: 800 });
  await page.setContent(
    sound
      .replace('BODY', () => body)
      .replace(
        '</head>',
        () =>
          `<style>html{background:#fff;color:#111} [data-theme=dark]{background:#111;color:#eee} ${style}</style></head>`,
      ),
  );
}

test('[hand] a sound page has no fault by difference, and none by the whole', async ({ page }) => {
  await plant(page, '');
  expect(await lookThrough(page, false)).toEqual([]);
  expect(await lookThrough(page, true)).toEqual([]);
});

const faults = [
  {
    what: 'a contrast too weak in the dark alone',
    body: '<p class="weak">Weak words</p>',
    style: '[data-theme=dark] .weak{color:#333}',
    says: /^color-contrast: \.weak.*\(dark 1280\)$/,
  },
  {
    what: 'a contrast too weak in the light alone',
    body: '<p class="weak">Weak words</p>',
    style: '.weak{color:#ccc} [data-theme=dark] .weak{color:#eee}',
    says: /^color-contrast: \.weak.*\(light 1280\)$/,
  },
  {
    what: 'weak words shown at 320 px alone',
    body: '<p class="weak">Weak words</p>',
    style: '.weak{color:#ccc;display:none} @media(max-width:350px){.weak{display:block}}',
    says: /^color-contrast: \.weak.*\(light 320\)$/,
  },
  {
    what: 'words shown at 320 px alone and weak in the dark',
    body: '<p class="weak">Weak words</p>',
    style:
      '.weak{display:none} [data-theme=dark] .weak{color:#333} @media(max-width:350px){.weak{display:block}}',
    says: /^color-contrast: \.weak.*\(dark 320\)$/,
  },
  {
    what: 'weak words shown at 390 px alone',
    body: '<p class="weak">Weak words</p>',
    style:
      '.weak{color:#ccc;display:none} @media(min-width:380px) and (max-width:400px){.weak{display:block}}',
    says: /^color-contrast: \.weak.*\(light 390\)$/,
  },
  {
    what: 'a link told by a colour alone, in the dark',
    body: '<p>Some words and <a href="#x">a link</a> in them.</p>',
    style: 'a{color:#00c} [data-theme=dark] a{color:#ddd;text-decoration:none}',
    says: /^link-in-text-block: a .*\(dark 1280\)$/,
  },
  {
    what: 'a picture without words',
    body: '<img src="data:image/gif;base64,R0lGODlhAQABAAAAACwAAAAAAQABAAA=">',
    style: '',
    says: /^image-alt: img/,
  },
  {
    what: 'a picture without words in the dark alone',
    body: '<img class="night" src="data:image/gif;base64,R0lGODlhAQABAAAAACwAAAAAAQABAAA=">',
    style: '.night{display:none;width:9px;height:9px} [data-theme=dark] .night{display:block}',
    says: /^image-alt: .*\(dark 1280\)$/,
  },
  {
    what: 'a button without a name at 390 px alone',
    body: '<button class="no"></button>',
    style:
      '.no{display:none;width:30px;height:30px} @media(min-width:380px) and (max-width:400px){.no{display:block}}',
    says: /^button-name: .*\(light 390, dark 390\)$/,
  },
  {
    what: 'a button that loses its name at 320 px alone',
    body: '<button class="no"><span>Save</span></button>',
    style: '.no{width:30px;height:30px;padding:0} @media(max-width:350px){.no span{display:none}}',
    says: /^button-name: .*\(light 320/,
  },
  {
    what: 'a heading skipped at 390 px alone',
    body: '<h2 class="gone">Two</h2><h3>Three</h3>',
    style: '@media(min-width:380px) and (max-width:400px){.gone{display:none}}',
    says: /^heading-order: .*\(light 390/,
  },
  {
    what: 'links too close at 320 px',
    body: '<nav><a href="#x">one</a><a href="#y">two</a></nav>',
    style: 'nav a{display:block;padding:20px} @media(max-width:350px){nav a{padding:0;line-height:10px}}',
    says: /^target-size: .*\(light 320\)$/,
  },
] as const;

test('[hand] by difference axe still finds a fault of each kind, in one theme or at one width alone', async ({
  page,
}) => {
  for (const { what, body, style, says } of faults) {
    await plant(page, body, style);
    expect.soft(await lookThrough(page, false), what).toContainEqual(expect.stringMatching(says));
  }
});

test('[hand] the looks at the shape find what sticks out at 320 px, what is too small, what spacing cuts off, and what is wider than the paper', async ({
  page,
}) => {
  await plant(page, '<p class="wide">x</p>', '@media(max-width:350px){.wide{width:400px}}');
  expect(await page.evaluate(stickingOut)).toEqual(['p.wide reaches 408 px']);
  await plant(page, '<button class="small">x</button>', '.small{width:20px;height:20px;padding:0}');
  expect(await page.evaluate(tooSmall)).toEqual(['button x 20 × 20']);
  await plant(
    page,
    '<p class="cut">Words that fit as long as nobody spaces them.</p>',
    '.cut{overflow:hidden;font:16px monospace;width:280px;height:36px;line-height:1;margin:0}',
  );
  expect(await page.evaluate(cutOff)).toEqual([]);
  await page.evaluate(spaceText);
  expect(await page.evaluate(cutOff)).toEqual([expect.stringMatching(/^p: Words that fit/)]);
  await plant(
    page,
    '<table class="wide"><tr><td>x</td></tr></table><p class="gone">Lost</p><button>Copy link</button>',
    '@media print{.wide{width:190mm}.gone{display:none}}',
  );
  await page.setViewportSize(paperPx);
  expect(await page.evaluate(stickingOut)).toEqual([]);
  await page.evaluate(markLines);
  await page.emulateMedia({ media: 'print' });
  expect(await page.evaluate(stickingOut)).toContainEqual(
    expect.stringMatching(/^table\.wide reaches 7\d\d px$/),
  );
  expect(await page.evaluate(offPaper)).toEqual(['not on paper: Lost', 'on paper: Copy link']);
});
