import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '..');

/** Documents that a later edition replaced, and the edition in force on 28 November 2026. */
const replaced: readonly (readonly [old: RegExp, inForce: string])[] = [
  [/M\.493-1[0-5]\b/, 'ITU-R M.493-16 (12/2023)'],
  [/M\.541-(?:8|9|10)\b/, 'ITU-R M.541-11 (11/2023)'],
  [/M\.585-[1-9]\b/, 'ITU-R M.585-10 (04/2026)'],
  [/M\.1371-[1-5]\b/, 'ITU-R M.1371-6 (02/2026)'],
  [/COMSAR\/Circ\.25/, 'MSC.1/Circ.1657'],
  [/Radio Regulations 20[01]\d|RR 20(?:[01]\d|20)\b/, 'Radio Regulations, edition of 2024'],
  [/47 CFR[^;|]*edition of 2005/, '47 CFR part 80 of 2025'],
];

/** Where history is told. */
const history = [
  'docs/guide/rules.md',
  // Since which edition a form exists.
  'src/identity/forms.ts',
];

function textsUnder(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(?:ts|md|html)$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .filter((path) => !path.startsWith('docs/generated') && !history.includes(path));
}

describe('clauses cite the edition in force', () => {
  const texts = [...textsUnder('src'), ...textsUnder('docs'), 'README.md', 'shared/README.md'];

  it.each(replaced)('%s is replaced by %s', (old) => {
    const found = texts.flatMap((path) =>
      readFileSync(join(root, path), 'utf8')
        .split('\n')
        // A row of identity forms or doubts may say in which edition a form first stood.
        .flatMap((line, index) =>
          old.test(line) && !/first held|since which/i.test(line) ? [`${path}:${index + 1}`] : [],
        ),
    );
    expect(found).toEqual([]);
  });
});
