import { describe, expect, it } from 'vitest';
// @ts-expect-error a script without declarations
import { markersIn, subjectFault } from '../../scripts/check-words.mjs';

describe('the check of words', () => {
  it('finds marker words in any case and across a line break of a comment, and no part of a longer word', () => {
    expect(markersIn('// Wanted, put\n  // away')).toEqual(['wanted', 'put away']);
    expect(markersIn('/**\n * by\n * itself */')).toEqual(['by itself']);
    expect(markersIn('unwanted, handstands')).toEqual([]);
  });

  it('takes `room: verb object` of at most 72 characters for a commit subject', () => {
    expect(subjectFault('call: name the sender')).toBeNull();
    expect(subjectFault('api, docs: renew the reports')).toBeNull();
    expect(subjectFault('Name the sender')).toBe('expected "room: verb object"');
    expect(subjectFault(`call: ${'a'.repeat(66)}`)).toBeNull();
    expect(subjectFault(`call: ${'a'.repeat(67)}`)).toBe('73 characters, at most 72');
  });
});
