/** Said in the foot of the page, of the site's copy on the device. */
export const offlineWords = {
  /** The whole site is kept. */
  ready: (version: string): string => `Ready offline, version ${version}.`,
  /** The first step is kept. */
  first: 'Rules, urgent cards and search are ready offline. The rest is being fetched.',
  /** The rest could not be fetched, for want of a signal. */
  restLater: 'Rules, urgent cards and search are ready offline. The rest comes on a later visit.',
  /** Nothing is kept: what came is not what was published. */
  refused:
    'Offline use is off at this address: a file came changed or not at all. Either the site is being renewed just now, or this host changes pages on the way. Each visit tries again; with a signal all works.',
  /** The first step is kept, the rest came changed. */
  restRefused:
    'Rules, urgent cards and search are ready offline, the rest is not: a file came changed or not at all. Either the site is being renewed just now, or this host changes pages on the way. Each visit tries again.',
  /** An earlier version stands whole. */
  newerRefused: 'A newer version could not be fetched whole. This one stays; each visit tries again.',
} as const;
