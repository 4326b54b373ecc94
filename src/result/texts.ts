import type { CodedText, Grade, Issue, Param } from './issue.ts';

/** A text, or a text and what it expects. */
export type Template = string | readonly [text: string, expected: string];

/**
 * The English texts of one module by grade, and the terms that stand in them.
 *
 * In a template `{name}` is a param, `{name:group}` the term `group.value`, or `group.*` where there is no such term
 * (as for "digit" and "digits"), `{name& or }` a list joined by " or " (by commas without that), and `[…]` is left out
 * where the first param in it has no value. `{received}`, `{expected}` and `{suggestion}` are those of the issue.
 */
export type Texts = {
  readonly [Group in Grade | 'said']?: Readonly<Record<string, Template>>;
} & { readonly terms?: Readonly<Record<string, string>> };

type Groups<T extends Texts> = { [G in Exclude<keyof T, 'terms'>]: T[G] }[Exclude<keyof T, 'terms'>];

/** Codes of a module. */
export type CodeOf<T extends Texts> =
  Groups<T> extends infer G ? (G extends unknown ? keyof G & string : never) : never;

/** The template of a code. */
export type TemplateOf<T extends Texts, C extends string> =
  Groups<T> extends infer G ? (G extends Readonly<Record<C, infer E extends Template>> ? E : never) : never;

type TextOf<E extends Template> = E extends readonly [infer A extends string, infer B extends string]
  ? `${A}${B}`
  : E;

/** The slots of a template, as they stand between the braces. */
type SlotsIn<S extends string> = S extends `${string}{${infer Slot}}${infer Rest}`
  ? Slot | SlotsIn<Rest>
  : never;

type NeededIn<S extends string> = S extends `${infer A}[${string}]${infer B}`
  ? SlotsIn<A> | NeededIn<B>
  : SlotsIn<S>;

type SpareIn<S extends string> = S extends `${string}[${infer A}]${infer B}`
  ? SlotsIn<A> | SpareIn<B>
  : never;

type NameOf<Slot extends string> = Slot extends `${infer N}:${string}`
  ? N
  : Slot extends `${infer N}&${string}`
    ? N
    : Slot;

/** Terms of a group, without its name and point. */
export type TermOf<T extends Texts, Group extends string> = keyof T['terms'] extends infer Key
  ? Key extends `${Group}.${infer Term}`
    ? Term
    : never
  : never;

type ValueOf<T extends Texts, Slot extends string> = Slot extends `${string}:${infer Group}&${string}`
  ? readonly WordOf<T, Group>[]
  : Slot extends `${string}:${infer Group}`
    ? WordOf<T, Group>
    : Slot extends `${string}&${string}`
      ? readonly Param[]
      : Param;

/** A term, or another coded text in its place; any value where one term covers all others. */
type WordOf<T extends Texts, Group extends string> =
  '*' extends TermOf<T, Group> ? Param : TermOf<T, Group> | CodedText;

type Reserved = 'received' | 'expected' | 'suggestion';

/** Params of a code, by the slots of its template. */
export type ParamsOf<T extends Texts, C extends string> =
  TextOf<TemplateOf<T, C>> extends infer S extends string
    ? {
        readonly [Slot in NeededIn<S> as Exclude<NameOf<Slot>, Reserved>]: ValueOf<T, Slot>;
      } & {
        readonly [Slot in SpareIn<S> as Exclude<NameOf<Slot>, Reserved>]?: ValueOf<T, Slot> | undefined;
      }
    : never;

/** Makes the issues of one module from a code and its params. */
export type IssueMaker<T extends Texts> = <C extends CodeOf<T>>(
  code: C,
  params: ParamsOf<T, C>,
  more?: Partial<Pick<Issue, 'at' | 'received' | 'clause' | 'suggestion'>>,
) => Issue;

/** What makes issues of the texts of a module. */
export function issueMaker<T extends Texts>(texts: T): IssueMaker<T> {
  return makerBy(texts, render);
}

/** The same for a table that {@link renderPlain} fills. */
export function plainIssueMaker<T extends Texts>(texts: T): IssueMaker<T> {
  return makerBy(texts, renderPlain);
}

function makerBy<T extends Texts>(texts: T, fill: typeof render): IssueMaker<T> {
  return (code, params, { at = [], ...more } = {}) => {
    const group = Object.keys(texts).find((each) => code in (texts[each as Grade] as object)) as Grade;
    const said = fill(texts[group]?.[code] as Template, { ...params, ...more }, texts.terms);
    return { code, grade: group, params, at, ...said, ...more };
  };
}

/**
 * Fills a template of plain params, each alone in its optional part and at the end of it: for a table whose module has
 * to be small.
 */
function renderPlain(
  template: Template,
  params: Readonly<Record<string, unknown>>,
): { readonly message: string; readonly expected?: string } {
  const [text, expected] = [template].flat();
  const filled: typeof params = { ...params, expected };
  const message = (text as string).replace(/\[?([^[{]*)\{(\w+)\}\]?/g, (_, before, name) =>
    filled[name] === undefined ? '' : before + filled[name],
  );
  return { message, ...(expected && { expected }) };
}

/** Makes the texts of one module that are no issues. */
export type TextMaker<T extends Texts> = <C extends CodeOf<T>>(code: C, params: ParamsOf<T, C>) => CodedText;

/** What makes texts that are no issues, of the texts of a module. */
export function textMaker<T extends Texts>(texts: T): TextMaker<T> {
  const issue = issueMaker(texts);
  return (code, params) => ({ code, params, message: issue(code, params).message });
}

/** An issue as a text: what was received is one of its params. */
export function textOf({ code, params = {}, message, received }: Issue): CodedText {
  return { code, params: received === undefined ? params : { ...params, received }, message };
}

/** Fills a template: the text, and what it expects where that is not empty. */
export function render(
  template: Template,
  params: Readonly<Record<string, unknown>>,
  terms: Readonly<Record<string, unknown>> = {},
): { readonly message: string; readonly expected?: string } {
  if (typeof template !== 'string') {
    const expected = render(template[1], params, terms).message;
    const said = render(template[0], { ...params, expected }, terms);
    return expected === '' ? said : { ...said, expected };
  }
  const message = template
    .replace(/\[([^{]*\{(\w+)[^\]]*)\]/g, (_, part, name) => (params[name] === undefined ? '' : part))
    .replace(/\{(\w+):?([\w-]*)&?([^}]*)\}/g, (_, name, group, between) =>
      [params[name]]
        .flat()
        .map(
          (value) =>
            (value as CodedText)?.message ?? terms[`${group}.${value}`] ?? terms[`${group}.*`] ?? value,
        )
        .join(between || ', '),
    );
  return { message };
}
