/** How the marks of a picture are moved. */
export const pullWords =
  'Pull a mark, or tap it and then tap its new place. A swipe beside the marks scrolls the page.';
