/** Said of a part of a page whose script is on its way, or did not come or broke off: then with one press. */
export const notStarted = {
  coming: 'Getting ready…',
  gone: 'What works this part of the page could not be fetched: what it shows is for the numbers of the start.',
  again: 'Load the page again',
} as const;
