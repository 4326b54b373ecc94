import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const src = join(import.meta.dirname, '../src');

/** Which rooms a room may import: the table of DEVELOPERS.md. */
const arrows: Record<string, readonly string[]> = {
  result: [],
  identity: ['result'],
  directory: ['result', 'identity'],
  channel: ['result'],
  position: ['result'],
  call: ['result', 'identity', 'channel', 'position'],
  speech: ['result', 'identity', 'channel', 'position', 'call'],
  burst: ['result', 'call'],
  audio: ['result', 'burst'],
  report: ['result', 'identity', 'directory', 'channel', 'position', 'call'],
  sentence: ['result', 'identity', 'channel', 'position', 'call', 'report'],
  station: ['result', 'identity', 'directory', 'channel', 'position', 'call', 'speech', 'burst'],
};

const files = readdirSync(src, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
  .map((entry) => join(entry.parentPath, entry.name));

const codeOf = (path: string): string =>
  readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '');

const importsOf = (path: string): string[] =>
  [...codeOf(path).matchAll(/^(?:import|export)[^'"]*?from\s+'([^']+)';?$/gms)].map(
    (match) => match[1] as string,
  );

describe('the plan of the house', () => {
  it('has no room outside the plan', () => {
    const rooms = readdirSync(src, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name);
    expect(rooms.sort()).toEqual(Object.keys(arrows).sort());
  });

  it.each(files.map((path) => [relative(src, path), path]))(
    '%s imports only what its room may',
    (_, path) => {
      const room = relative(src, path as string).split('/')[0] as string;
      for (const specifier of importsOf(path as string)) {
        if (specifier.startsWith('.')) {
          const target = resolve(dirname(path as string), specifier);
          expect(existsSync(target), `${specifier} exists`).toBe(true);
          const targetRoom = relative(src, target).split('/')[0] as string;
          if (!room.endsWith('.ts') && targetRoom !== room) expect(arrows[room]).toContain(targetRoom);
        } else {
          expect([room, relative(src, path as string), specifier]).toEqual([
            'position',
            'position/geodesic.ts',
            'geographiclib-geodesic',
          ]);
        }
      }
    },
  );

  it('has entry files that only re-export', () => {
    for (const path of files.filter((file) => file.endsWith('index.ts'))) {
      const statements = codeOf(path)
        .replace(/export (type )?(\{[^}]*\}|\*) from '[^']+';/g, '')
        .trim();
      expect(statements, relative(src, path)).toBe('');
    }
  });
});
