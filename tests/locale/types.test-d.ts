// Compiled by tsc, never run: a catalogue is complete, and params have the names of their template.
import { german } from '../../src/locale/de.ts';
import type { Catalogue, TextParams } from '../../src/locale/index.ts';

const { 'identity-empty': _, ...lacking } = german.texts;
// @ts-expect-error: a code without a text
export const incomplete: Catalogue = { ...german, texts: lacking };
export const complete: Catalogue = {
  ...german,
  texts: { ...lacking, 'identity-empty': ['leer', '9 Ziffern'] },
};
// @ts-expect-error: a text without what it expects, which English has
export const half: Catalogue = { ...german, texts: { ...lacking, 'identity-empty': 'leer' } };

export const params: TextParams['identity-digit-count'] = { count: 8 };
// @ts-expect-error: a name that the template does not have
export const misnamed: TextParams['identity-digit-count'] = { digits: 8 };
// @ts-expect-error: a word that is no term of the group
export const noTerm: TextParams['identity-use'] = { reason: 'own-grup' };
