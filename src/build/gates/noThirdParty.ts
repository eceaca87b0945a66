import { attribute, elementsOf, lineOf } from '../builtPages.ts';
import type { OpenGate } from './fault.ts';

const loaders: Readonly<Record<string, readonly string[]>> = {
  script: ['src'],
  img: ['src', 'srcset'],
  source: ['src', 'srcset'],
  video: ['src', 'poster'],
  audio: ['src'],
  track: ['src'],
  iframe: ['src'],
  embed: ['src'],
  object: ['data'],
  image: ['href', 'xlink:href'],
  use: ['href', 'xlink:href'],
  form: ['action'],
  input: ['src', 'formaction'],
};
const namesOnly = new Set(['canonical', 'alternate', 'license', 'author', 'me']);

/** Nothing a page loads comes from another origin. Links that a reader follows may lead elsewhere. */
export const noThirdParty: OpenGate = ({ origin }) => ({
  read: (page) =>
    [...elementsOf(page)].flatMap((element) => {
      const isLoadingLink = element.tagName === 'link' && !namesOnly.has(attribute(element, 'rel') ?? '');
      const names = isLoadingLink ? ['href'] : (loaders[element.tagName] ?? []);
      return names.flatMap((name) => {
        const value = attribute(element, name);
        const addresses =
          name === 'srcset'
            ? (value?.split(',').map((part) => part.trim().split(/\s+/)[0] ?? '') ?? [])
            : [value ?? ''];
        return addresses
          .filter(
            (address) =>
              !address.startsWith('data:') &&
              URL.canParse(address, origin + page.address) &&
              new URL(address, origin + page.address).origin !== origin,
          )
          .map((address) => ({
            file: page.file,
            line: lineOf(element),
            says: `<${element.tagName} ${name}="${address}"> loads from another origin`,
          }));
      });
    }),
});
