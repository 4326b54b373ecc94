import type { givenTerms } from '../../result/internal.ts';
import type { Translation } from '../catalogue.ts';

export const result: Translation<{ readonly terms: typeof givenTerms }> = {
  'given.a function': 'eine Funktion',
  'given.a list': 'eine Liste',
  'given.an object': 'ein Objekt',
  'given.a Date: use its getTime()': 'ein Date: getTime() davon verwenden',
  'given.a result: look at .ok first, then use .value':
    'ein Ergebnis: zuerst .ok prüfen, dann .value verwenden',
  'given.a promise: await it first': 'ein Promise: zuerst mit await abwarten',
  'given.an object with lat: name its fields latitude and longitude':
    'ein Objekt mit lat: seine Felder latitude und longitude nennen',
  'given.something that throws when it is looked at': 'etwas, das beim Ansehen einen Fehler wirft',
};
