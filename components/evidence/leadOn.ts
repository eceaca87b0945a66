/**
 * A link from when every entry stood on one page names an entry that now stands on the page of its part: its
 * anchor was left behind, inside an element that names that page. Goes there in the old link's place, so that
 * Back leads to where the reader came from.
 */
export function leadOn(): void {
  const anchor = document.getElementById(location.hash.slice(1));
  const path = anchor?.closest<HTMLElement>('[data-part]')?.dataset['part'];
  if (path !== undefined) location.replace(path + location.hash);
}
