/** Runs in the page: what sticks out sideways, unless it scrolls inside a box of its own. */
export function stickingOut(): string[] {
  const limit = document.documentElement.clientWidth + 1;
  if (document.documentElement.scrollWidth <= limit) return [];
  const isHeld = (element: Element): boolean => {
    for (let box = element.parentElement; box && box !== document.body; box = box.parentElement)
      if (getComputedStyle(box).overflowX !== 'visible') return true;
    return false;
  };
  const found = [...document.body.querySelectorAll('*')].filter(
    (element) => element.getBoundingClientRect().right > limit && !isHeld(element),
  );
  return found
    .slice(0, 5)
    .map(
      (element) =>
        `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''} reaches ${Math.round(element.getBoundingClientRect().right)} px`,
    )
    .concat(found.length === 0 ? ['something inside a box that scrolls'] : []);
}

/** Runs in the page: text that its own box cuts off. */
export function cutOff(): string[] {
  return [
    ...document.body.querySelectorAll<HTMLElement>(
      'p, li, a, button, label, legend, summary, h1, h2, h3, td, th, dt, dd, output, figcaption',
    ),
  ]
    .filter((element) => {
      const { overflowX, overflowY } = getComputedStyle(element);
      const cutsX = /hidden|clip/.test(overflowX) && element.scrollWidth > element.clientWidth + 1;
      const cutsY = /hidden|clip/.test(overflowY) && element.scrollHeight > element.clientHeight + 1;
      return element.clientWidth > 1 && (cutsX || cutsY);
    })
    .slice(0, 5)
    .map((element) => `${element.tagName.toLowerCase()}: ${element.textContent?.trim().slice(0, 40)}`);
}

/**
 * Runs in the page: things to press or type in that are smaller than 24 px and not inside a sentence.
 * Marks in a drawing are left out: there the nearest mark within a finger's reach answers, whatever its size.
 */
export function tooSmall(): string[] {
  return [
    ...document.querySelectorAll<HTMLElement>(
      'button, input, select, textarea, summary, [role=button], [role=slider], [role=radio], [role=checkbox], [role=tab]',
    ),
  ]
    .filter(
      (element) =>
        !element.closest('svg.stage') &&
        element.checkVisibility({
          opacityProperty: true,
          visibilityProperty: true,
        }),
    )
    .map((element) => ({
      element,
      box: (element.closest('label') ?? element).getBoundingClientRect(),
    }))
    .filter(({ box }) => box.width > 1 && (box.width < 24 || box.height < 24))
    .map(
      ({ element, box }) =>
        `${element.tagName.toLowerCase()} ${element.getAttribute('aria-label') ?? element.textContent?.trim().slice(0, 30)} ${box.width.toFixed(0)} × ${box.height.toFixed(0)}`,
    );
}

/** Runs in the page: what moves although the reader asked for stillness. */
export const moving = (): string[] =>
  [...document.querySelectorAll('*')]
    .filter(
      (element) =>
        Math.max(...getComputedStyle(element).transitionDuration.split(',').map(parseFloat)) > 0.01 ||
        getComputedStyle(element).animationName !== 'none',
    )
    .map((element) => `${element.tagName} ${element.getAttribute('class')}`);

/**
 * Runs in the page: the widest spacing a reader may set (WCAG 1.4.12), in a way the content policy allows;
 * called again, it goes.
 */
export function spaceText(): void {
  if (document.adoptedStyleSheets.length > 0) {
    document.adoptedStyleSheets = [];
    return;
  }
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(
    '*{line-height:1.5!important;letter-spacing:.12em!important;word-spacing:.16em!important} p{margin-bottom:2em!important}',
  );
  document.adoptedStyleSheets.push(sheet);
}
