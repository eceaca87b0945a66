/** Said in the foot of the page once the whole site is kept on the device. */
export const readyOffline = (version: string): string => `Ready offline, version ${version}.`;
