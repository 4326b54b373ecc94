import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '..');
const ID = /D-[a-z]+-\d+/g;

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

const listed = [
  ...readFileSync(join(root, 'docs/deviations.md'), 'utf8').matchAll(/^\| (D-[a-z]+-\d+) \|/gm),
].map((match) => match[1] as string);
const marked = filesUnder(join(root, 'src'))
  .filter((path) => path.endsWith('.ts'))
  .flatMap((path) =>
    readFileSync(path, 'utf8')
      .split('\n')
      .filter((line) => line.includes('deviation:'))
      .flatMap((line) => line.match(ID) ?? []),
  );

const assertions: Record<string, () => void> = {};
for (const path of filesUnder(join(root, 'tests/deviations'))) {
  const module = (await import(path)) as { deviations: Record<string, () => void> };
  Object.assign(assertions, module.deviations);
}

describe('docs/deviations.md', () => {
  it('says of each doubt what would settle it, and of each choice what the standards say', () => {
    const rows = readFileSync(join(root, 'docs/deviations.md'), 'utf8').split('\n');
    const choices = rows.indexOf('## Choices of our own');
    const cells = (row: string) => row.split('|').slice(1, -1);
    for (const [place, row] of rows.entries()) {
      if (!row.startsWith('| D-')) continue;
      expect(cells(row), row).toHaveLength(place < choices ? 5 : 4);
      for (const cell of cells(row)) expect(cell.trim(), row).not.toBe('');
    }
  });

  it('has at most 45 doubts', () => {
    const [doubts = ''] = readFileSync(join(root, 'docs/deviations.md'), 'utf8').split(
      '## Choices of our own',
    );
    const count = doubts.match(/^\| D-/gm)?.length ?? 0;
    expect(count).toBeGreaterThan(0);
    expect(count).toBeLessThanOrEqual(45);
  });

  it('has as many of each grade as the page on the rules says', () => {
    const [doubts = '', choices = ''] = readFileSync(join(root, 'docs/deviations.md'), 'utf8').split(
      '## Choices of our own',
    );
    const rows = (text: string) => text.split('\n').filter((line) => line.startsWith('| D-'));
    const grades = rows(doubts).map((row) => row.split('|')[3]?.trim());
    const counts = ['high', 'medium', 'low'].map((grade) => grades.filter((each) => each === grade).length);
    const mixed = grades.length - counts.reduce((sum, count) => sum + count);
    const cells = [...counts, mixed, 0, grades.length, rows(choices).length];
    const page = readFileSync(join(root, 'docs/guide/rules.md'), 'utf8');
    expect(page).toContain(`| 29 November 2026 | ${cells.join(' | ')} |`);
  });

  it('lists no id twice', () => {
    expect(listed).toEqual([...new Set(listed)]);
  });

  it('lists exactly the ids that the code carries', () => {
    expect([...new Set(listed)].sort()).toEqual([...new Set(marked)].sort());
  });

  it('lists exactly the ids that have an assertion', () => {
    expect([...listed].sort()).toEqual(Object.keys(assertions).sort());
  });

  for (const [id, holds] of Object.entries(assertions)) {
    it(`${id} still describes the code`, () => {
      expect.hasAssertions();
      holds();
    });
  }
});
