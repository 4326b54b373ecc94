import type { givenTerms } from '../../result/internal.ts';
import type { Translation } from '../catalogue.ts';

export const result: Translation<{ readonly terms: typeof givenTerms }> = {
  'given.a function': 'een functie',
  'given.a list': 'een lijst',
  'given.an object': 'een object',
  'given.a Date: use its getTime()': 'een Date: gebruik getTime() ervan',
  'given.a result: look at .ok first, then use .value':
    'een resultaat: kijk eerst naar .ok, gebruik dan .value',
  'given.a promise: await it first': 'een promise: wacht er eerst op met await',
  'given.an object with lat: name its fields latitude and longitude':
    'een object met lat: noem de velden latitude en longitude',
  'given.something that throws when it is looked at': 'iets dat bij het lezen een fout geeft',
};
