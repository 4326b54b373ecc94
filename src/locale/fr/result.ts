import type { givenTerms } from '../../result/internal.ts';
import type { Translation } from '../catalogue.ts';

export const result: Translation<{ readonly terms: typeof givenTerms }> = {
  'given.a function': 'une fonction',
  'given.a list': 'une liste',
  'given.an object': 'un objet',
  'given.a Date: use its getTime()': 'un Date : utiliser son getTime()',
  'given.a result: look at .ok first, then use .value':
    'un résultat : vérifier d’abord .ok, puis utiliser .value',
  'given.a promise: await it first': 'une promesse : l’attendre d’abord par await',
  'given.an object with lat: name its fields latitude and longitude':
    'un objet avec lat : nommer ses champs latitude et longitude',
  'given.something that throws when it is looked at': 'une valeur qui lève une erreur à la lecture',
};
