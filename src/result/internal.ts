/** What other modules of this library use of this one and the package does not publish. */
export { formSchema } from './form-schema.ts';
export { givenInWords, givenTerms, requireOptions, safely, want, wantNames } from './given.ts';
export { quote } from './quote.ts';
export type { Failure } from './result.ts';
export { failures } from './result.ts';
export type {
  CodeOf,
  IssueMaker,
  ParamsOf,
  Template,
  TemplateOf,
  TermOf,
  TextMaker,
  Texts,
} from './texts.ts';
export { issueMaker, plainIssueMaker, render, textMaker, textOf } from './texts.ts';
