import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');
const { files } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { files: string[] };

describe('the README, which is the page of the package', () => {
  const targets = [...readme.matchAll(/\]\(([^)]+)\)/g)].map(([, target]) => target as string);

  it('has a picture', () => {
    expect(targets.some((target) => target.endsWith('.svg'))).toBe(true);
  });

  it.each(targets.filter((target) => !target.startsWith('https://')))(
    'links to %s, which is in the package',
    (target) => {
      expect(existsSync(join(root, target))).toBe(true);
      expect(files).toContain(target);
    },
  );
});
