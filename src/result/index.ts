/**
 * Results: a value with notices, or issues that say what is wrong, where, what was expected and by which clause.
 *
 * Guide: [Results and issues](../../docs/guide/result.md).
 *
 * @packageDocumentation
 */
export type { FormSchema } from './form-schema.ts';
export type { CodedText, Grade, Issue, Notice, Param } from './issue.ts';

export type { Result } from './result.ts';
export { failure, success } from './result.ts';
export { valueOf } from './value-of.ts';
