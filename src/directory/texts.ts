import { type CodeOf, type IssueMaker, issueMaker } from '../result/internal.ts';

const directoryTerms = {
  'more-findings.1': 'finding is',
  'more-findings.*': 'findings are',
};

/** What reading a list of stations says. */
export const directoryTexts = {
  error: {
    'directory-csv-header': ['List has no column for identities in its first line', 'a column named mmsi'],
    'directory-json-shape': ['Text is not a stored directory', 'JSON of a directory'],
    'directory-vcard-none': ['Text contains no vCard', 'BEGIN:VCARD'],
  },
  check: {
    'directory-csv-quotes': 'Row has quotes that do not enclose a whole field: the line is left out',
    'directory-csv-short': 'Row ends before the identity and is left out',
    'directory-csv-twice': 'Row repeats the identity of line {line}: one number belongs to one station',
    'directory-csv-time': ['Time: expected {expected}, got {received}', 'an ISO 8601 instant with a zone'],
    'directory-group': ['Group: expected {expected}, got {received}', 'the identity of a group'],
    'directory-json-station': 'Stored station has no valid identity and is left out',
    'directory-json-field': 'Stored field is not valid and is left out',
    'directory-vcard-begin': 'Card begins before the previous one has ended',
    'directory-vcard-end': 'Card has no end',
    'directory-vcard-line': 'Line is not a vCard property',
    'directory-vcard-version': ['Card version: expected {expected}, got {received}', '4.0'],
    'directory-vcard-identity': 'Card has no X-MMSI and is left out',
    'directory-more-notices': '{count} more {count:more-findings} not listed',
  },
  terms: directoryTerms as typeof directoryTerms,
} as const;

/** All texts of this module. */
export type DirectoryTexts = typeof directoryTexts;

/** A code whose text needs no params. */
export type PlainCode = Exclude<CodeOf<DirectoryTexts>, 'directory-csv-twice' | 'directory-more-notices'>;

/** Makes an issue or notice of this module. */
export const issue: IssueMaker<DirectoryTexts> = /* @__PURE__ */ issueMaker(directoryTexts);
