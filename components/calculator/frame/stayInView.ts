const started = new WeakSet<Element>();
const ns = 'http://www.w3.org/2000/svg';

/** The drawing as it stands now, without names: ids stay the original's, and what it draws with is found there. */
function copyOf(drawing: SVGSVGElement): SVGSVGElement {
  const copy = drawing.cloneNode(true);
  if (!(copy instanceof SVGSVGElement)) return document.createElementNS(ns, 'svg');
  for (const part of [copy, ...copy.querySelectorAll('[id],[tabindex]')]) {
    part.removeAttribute('id');
    part.removeAttribute('tabindex');
  }
  return copy;
}

/**
 * On a phone the fields stand below picture and sentence. Once a field is used, a strip at the top keeps a small
 * picture and the first sentence in view, with the press that takes the last change back. It is a copy for the
 * eye: a screen reader hears the sentence where it stands.
 */
export function stayInView(calculator: Element): void {
  const [pic, says, fig] = ['.pic', '.says', '.fig'].map((part) => calculator.querySelector(part));
  if (started.has(calculator) || !pic || !says || !fig) return;
  started.add(calculator);

  const strip = document.createElement('div');
  strip.className = 'strip no-print';
  strip.setAttribute('aria-hidden', 'true');
  const small = document.createElement('div');
  const words = document.createElement('p');
  const undo = document.createElement('button');
  Object.assign(undo, { type: 'button', tabIndex: -1, className: 'btn line', textContent: 'Undo' });
  const press = () => calculator.querySelector<HTMLElement>('.calc-tools [aria-disabled]');
  undo.addEventListener('click', () => press()?.click());
  strip.append(small, words, undo);
  calculator.append(strip);

  let isShown = false;
  const copy = () => {
    if (!isShown) return;
    const stack = pic.querySelector('.stack') ?? pic;
    const drawings = [...stack.querySelectorAll<SVGSVGElement>('svg')].filter(
      (each) => !each.parentElement?.closest('svg') && !each.closest('.legend,.calc-tools'),
    );
    small.replaceChildren(...drawings.slice(0, stack === pic ? 1 : 2).map(copyOf));
    words.textContent = (says.querySelector('b') ?? says.querySelector('p'))?.textContent ?? '';
    undo.ariaDisabled = press()?.ariaDisabled ?? 'true';
  };
  const show = () => {
    const isGone = pic.getBoundingClientRect().bottom < 80;
    const is = innerWidth < 761 && isGone && fig.getBoundingClientRect().bottom > 160;
    if (is === isShown) return;
    isShown = is;
    strip.classList.toggle('is-shown', is);
    document.documentElement.classList.toggle('has-strip', is);
    copy();
  };
  let asked = 0;
  const soon = (what: () => void) => {
    cancelAnimationFrame(asked);
    asked = requestAnimationFrame(what);
  };
  new MutationObserver(() => soon(copy)).observe(fig, {
    subtree: true,
    childList: true,
    characterData: true,
    attributes: true,
  });
  addEventListener('scroll', show, { passive: true });
  addEventListener('resize', show);
  /** A field that lies under the strip as it comes is brought out from under it. */
  const free = () => {
    show();
    const field =
      calculator.contains(document.activeElement) && document.activeElement?.getBoundingClientRect();
    const under = strip.getBoundingClientRect().bottom - (field ? field.top : Infinity);
    if (isShown && under > 0) scrollBy({ top: -under - 12 });
  };
  calculator.addEventListener('focusin', () => setTimeout(free, 300));
  free();
}
