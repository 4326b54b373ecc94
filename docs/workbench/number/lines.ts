import { encodeCallAddress, formatIdentity, type Identity, identityForms, usesOf } from 'seahail/identity';
import {
  administrationName,
  administrationOf,
  administrationsEdition,
} from 'seahail/identity/administrations';
import { h } from '../frame/dom.ts';
import { type LedgerLine, ledger } from '../frame/ledger.ts';
import { inventedName } from '../frame/names.ts';

/** One sentence: what it is and who issued it. */
export function inShort(identity: Identity): string {
  const form = formOf(identity);
  const name = inventedName(identity.mmsi);
  const who = name === undefined ? '' : `, ${name} of the examples`;
  if (!('mid' in identity)) return `${capital(form.name)}${who}. No country is in this number.`;
  const entry = administrationOf(identity.mid);
  return entry === undefined
    ? `${capital(form.name)}${who}. Who issued it is not in the table.`
    : `${capital(form.name)}${who}. The number was issued by ${inASentence(administrationName(entry))}.`;
}

/** Names of states that take an article. */
const WITH_ARTICLE =
  /^(?:United|Netherlands|Bahamas|Philippines|Marshall|Solomon|Comoros|Maldives|Gambia|Sudan|Congo|Democratic|Russian|State|Vatican)\b|^[A-Z][a-z]+(?: [A-Z][a-z]+)? Republic\b/;

function inASentence(name: string): string {
  return WITH_ARTICLE.test(name) ? `the ${name}` : name;
}

/** Everything the library derives from an identity. */
export function linesOf(identity: Identity): HTMLElement {
  const form = formOf(identity);
  const uses = usesOf(identity);
  const table = `${administrationsEdition.document}, ${administrationsEdition.entries} entries as of ${administrationsEdition.asOf}`;
  const entry = 'mid' in identity ? administrationOf(identity.mid) : undefined;
  const few: (LedgerLine | null)[] = [
    { what: 'Nine digits', answer: identity.mmsi },
    { what: 'For people', answer: formatIdentity(identity) },
    { what: 'Form', answer: `${form.pattern}, ${form.name}`, clause: form.clause },
    { what: 'In use since', answer: form.since },
    'mid' in identity ? { what: 'Country digits', answer: `${identity.mid} (MID)` } : null,
    entry === undefined ? null : { what: 'Country code', answer: entry.iso3166, clause: 'ISO 3166-1' },
    'serial' in identity ? { what: 'Serial number', answer: identity.serial } : null,
    {
      what: 'On the air',
      answer: `${encodeCallAddress(identity.mmsi)}, ten digits in five symbols`,
      clause: 'ITU-R M.493-16',
    },
  ];
  const lines: (LedgerLine | null)[] = [
    { what: 'Used by', answer: form.holder },
    'mid' in identity
      ? {
          what: 'Issued by',
          answer: entry === undefined ? 'not in this edition of the table' : administrationName(entry),
          clause: table,
        }
      : null,
    'categoryHint' in identity && identity.categoryHint !== undefined
      ? {
          what: 'Perhaps',
          answer: `${identity.categoryHint.replaceAll('-', ' ')}, where the optional scheme is followed`,
        }
      : null,
    'manufacturer' in identity
      ? {
          what: 'Maker',
          answer: `${identity.manufacturer}${identity.manufacturer === '00' ? ', for tests' : ''}`,
        }
      : null,
    { what: 'As own number', answer: yes(uses.own), clause: 'ITU-R M.585-10, M.493-16' },
    { what: 'Called as one', answer: yes(uses.individual) },
    { what: 'Called as a group', answer: yes(uses.group) },
    {
      what: 'Whose name?',
      answer:
        'The digits carry no name and no check digit. The administration that issued them keeps the licence, and the ITU publishes a list of ship stations and one of coast stations that anybody may search',
      clause: 'RR 2024 Article 20',
    },
  ];
  return h(
    'div',
    {},
    ledger(lines),
    h('details', {}, h('summary', {}, 'Its form, country digits and symbols on the air'), ledger(few)),
  );
}

/** The kind of an identity, as in the middle of a sentence. */
export function formName(identity: Identity): string {
  return formOf(identity).name;
}

function formOf(identity: Identity): (typeof identityForms)[number] {
  const form = identityForms.find(({ kind }) => kind === identity.kind);
  if (form === undefined) throw new Error(`no form for ${identity.kind}`);
  return form;
}

function yes(may: boolean): string {
  return may ? 'yes' : 'no';
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
