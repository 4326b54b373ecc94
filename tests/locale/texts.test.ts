import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { german } from '../../src/locale/de.ts';
import { english } from '../../src/locale/en.ts';
import { french } from '../../src/locale/fr.ts';
import { translate } from '../../src/locale/index.ts';
import { dutch } from '../../src/locale/nl.ts';

type Template = string | readonly [string, string];
const texts = english.texts as Readonly<Record<string, Template>>;
const src = join(import.meta.dirname, '../../src');
const modules = readdirSync(src).filter((module) => existsSync(join(src, module, 'texts.ts')));

const slotsOf = (template: Template): string[] => [
  ...new Set(
    [
      ...[template]
        .flat()
        .join(' ')
        .matchAll(/\{(\w+)/g),
    ].map((match) => match[1] as string),
  ),
];
const termsOf = (group: string): string[] =>
  Object.keys(texts).flatMap((key) => (key.startsWith(`${group}.`) ? [key.slice(group.length + 1)] : []));

/** Params for a template, one set for each term that may stand in it. */
function samplesOf(template: Template): Record<string, string | number>[] {
  const slots = [
    ...[template]
      .flat()
      .join(' ')
      .matchAll(/\{(?!received)(\w+)(?::([\w-]+))?[^}]*\}/g),
  ];
  const most = Math.max(1, ...slots.map(([, , group]) => (group === undefined ? 1 : termsOf(group).length)));
  return Array.from({ length: most }, (_, n) =>
    Object.fromEntries(
      slots.map(([, name, group]) => {
        const terms = group === undefined ? [] : termsOf(group);
        return [name as string, terms.length > 0 ? (terms[n % terms.length] as string) : 7];
      }),
    ),
  );
}

/** One line for each code and each term that stands in it, as a person reads it. */
function rendered(module: string, catalogue: Parameters<typeof translate>[1]): string[] {
  return Object.entries(english.codes).flatMap(([code, { module: of, grade }]) =>
    of !== module
      ? []
      : samplesOf(texts[code] as Template).map((params) => {
          const said = translate({ code, params, suggestion: 'S', received: "'R'" }, catalogue);
          return `${grade ?? 'said'} ${code}: ${said.text}${said.expected === undefined ? '' : ` | ${said.expected}`}`;
        }),
  );
}

describe.each(modules)('texts of %s', (module) => {
  it('hold every code that the module gives, and no other', () => {
    const used = readdirSync(join(src, module), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name !== 'texts.ts')
      .flatMap((entry) => [
        ...readFileSync(join(entry.parentPath, entry.name), 'utf8').matchAll(
          new RegExp(`(?<!kind: \\[?)['"](${module}-[a-z0-9-]+)['"]`, 'g'),
        ),
      ])
      .map((match) => match[1] as string);
    const listed = Object.entries(english.codes).flatMap(([code, { module: of }]) =>
      of === module ? [code] : [],
    );
    expect([...new Set(used)].sort()).toEqual(listed.sort());
  });

  // The one place where the English wording is pinned: read it as a person would.
  it('say in English what is in the table', async () => {
    await expect(`${rendered(module, english).join('\n')}\n`).toMatchFileSnapshot(`english/${module}.txt`);
  });
});

describe.each([german, french, dutch])('$lang', (catalogue) => {
  const other = catalogue.texts as Readonly<Record<string, Template>>;

  it('has the params of English and no others', () => {
    const odd = Object.keys(texts).filter(
      (key) => String(slotsOf(other[key] ?? '').sort()) !== String(slotsOf(texts[key] as Template).sort()),
    );
    expect(odd).toEqual([]);
  });

  it.each(modules)(
    'says everything of %s, with nothing undefined, no English left and no sentence over 200 characters',
    (module) => {
      const lines = rendered(module, catalogue);
      const englishLines = rendered(module, english);
      expect(lines.length).toBe(englishLines.length);
      // A text of data alone, such as "{ship} MHz", is the same in every language.
      const said = (line: string) => line.replace(/^\S+ \S+: /, '').replace(/MHz|[^a-z]/gi, '');
      expect(lines.filter((line, n) => line === englishLines[n] && said(line) !== '')).toEqual([]);
      const odd = /\bundefined\b|\bnull\b|\[object|[{}[\]]/;
      expect(lines.filter((line, n) => odd.test(line) && !odd.test(englishLines[n] as string))).toEqual([]);
      // Words that only English has; terms of the trade that every language takes over are not among them.
      const left =
        /\b([Tt]he|[Aa]nd|with|which|expected|got|has|have|from|[Tt]his|that|not|call|calls|vessel|does|only|other|of the)\b/;
      expect(lines.map((line) => line.replace(/^\S+ \S+: /, '')).filter((line) => left.test(line))).toEqual(
        [],
      );
      const sentences = [...lines, ...englishLines].flatMap((line) =>
        line.replace(/^\S+ \S+: /, '').split(/(?<=\.) | \| /),
      );
      expect(sentences.filter((sentence) => sentence.length > 200)).toEqual([]);
    },
  );
});

describe('translate', () => {
  it('keeps English for a code that the catalogue lacks, and marks it', () => {
    const issue = { code: 'identity-empty', params: {}, message: 'Identity is empty', expected: '9 digits' };
    expect(translate(issue, { lang: 'de', texts: {} })).toEqual({
      lang: 'en',
      text: 'Identity is empty',
      expected: '9 digits',
    });
    expect(translate(issue, german)).toEqual({ lang: 'de', text: 'Kennung ist leer', expected: '9 Ziffern' });
    expect(translate({ ...issue, code: 'constructor' }, german).lang).toBe('en');
  });

  it('says in English what the library says itself', () => {
    const issue = {
      code: 'identity-kind',
      params: { kind: 'coast', accepted: ['ship', 'mob'] },
      received: "'002320014'",
    };
    expect(translate(issue, english)).toEqual({
      lang: 'en',
      text: 'Identity: expected ship or man-overboard device, got coast station',
      expected: 'ship or man-overboard device',
    });
  });
});
