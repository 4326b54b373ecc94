import { isReason, type Reason, type SecondTelecommand, type UnknownSymbol } from '../symbol.ts';
import { callTerms } from '../terms.ts';

/** The words for a second telecommand, which may be a reason. */
export function secondTelecommandInWords(name: SecondTelecommand | UnknownSymbol): string {
  return isReason(name)
    ? callTerms[`reason.${name}`]
    : inWords<'second-telecommand', Exclude<SecondTelecommand, Reason>>(
        callTerms,
        'second-telecommand',
        name,
      );
}

/** The word for a name of a field, or the number of a symbol without one. */
export function inWords<Group extends string, Name extends string>(
  terms: Readonly<Record<`${Group}.${Name}`, string>>,
  group: Group,
  name: Name | UnknownSymbol,
): string {
  const key = `${group}.${name}` as `${Group}.${Name}`;
  return Object.hasOwn(terms, key) ? terms[key] : name.replace('symbol-', 'symbol ');
}
