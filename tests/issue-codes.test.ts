import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const src = join(import.meta.dirname, '../src');
const rooms = readdirSync(src, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && existsSync(join(src, entry.name, 'issue-code.ts')))
  .map((entry) => entry.name);

describe.each(rooms)('issue codes of %s', (room) => {
  it('the list in issue-code.ts is exactly what the code gives', async () => {
    const module = (await import(join(src, room, 'issue-code.ts'))) as Record<
      string,
      readonly { code: string }[]
    >;
    const listed = Object.values(module)
      .filter(Array.isArray)
      .flat()
      .map((entry) => entry.code);
    const used = readdirSync(join(src, room), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name !== 'issue-code.ts')
      .flatMap((entry) => [
        ...readFileSync(join(entry.parentPath, entry.name), 'utf8').matchAll(
          new RegExp(`(?<!kind: )['"](${room}-[a-z0-9-]+)['"]`, 'g'),
        ),
      ])
      .map((match) => match[1] as string);
    expect(listed).toEqual([...new Set(listed)]);
    expect([...new Set(used)].sort()).toEqual([...listed].sort());
  });
});
