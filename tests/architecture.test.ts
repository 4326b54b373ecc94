import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const src = join(import.meta.dirname, '../src');
const manifest = JSON.parse(readFileSync(join(src, '../package.json'), 'utf8')) as {
  exports: Record<string, unknown>;
};

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
  bridge: ['result', 'report', 'sentence', 'network'],
  network: ['result', 'position', 'call', 'report'],
  station: ['result', 'identity', 'directory', 'channel', 'position', 'call', 'speech', 'burst'],
  simulation: ['result', 'position', 'call', 'burst', 'station'],
  locale: [
    'result',
    'identity',
    'directory',
    'channel',
    'position',
    'call',
    'speech',
    'burst',
    'audio',
    'sentence',
    'network',
    'bridge',
    'station',
  ],
};

/** Files that import each other in a circle, one line a circle: the list may only get shorter, to none. */
const knownCircles: readonly string[] = [];

/** The files a room may be imported by: its entry points, and what it shows the other rooms only. */
const doors = new Set([
  ...Object.keys(manifest.exports)
    .filter((name) => name !== '.' && name !== './package.json')
    .flatMap((name) => [`${name.slice(2)}/index.ts`, `${name.slice(2)}.ts`]),
  ...Object.keys(arrows).map((room) => `${room}/internal.ts`),
]);

const files = readdirSync(src, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
  .map((entry) => join(entry.parentPath, entry.name));

const codeOf = (path: string): string =>
  readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '');

const importsOf = (path: string): string[] =>
  [...codeOf(path).matchAll(/^(?:import|export)[^'"]*?from\s+'([^']+)';?$/gms)].map(
    (match) => match[1] as string,
  );

/** Groups of files each of which reaches every other by imports: the strongly connected parts of the graph. */
function circlesOf(imports: ReadonlyMap<string, readonly string[]>): string[][] {
  const reached = new Map([...imports.keys()].map((file) => [file, reachOf(file)]));
  const circles = new Map<string, string[]>();
  for (const [file, others] of reached) {
    const circle = [...others].filter((other) => reached.get(other)?.has(file)).sort();
    if (others.has(file)) circles.set(circle.join(' '), circle);
  }
  return [...circles.values()];

  function reachOf(start: string): Set<string> {
    const seen = new Set<string>();
    const open = [start];
    for (let file = open.pop(); file !== undefined; file = open.pop()) {
      for (const next of imports.get(file) ?? []) {
        if (seen.has(next)) continue;
        seen.add(next);
        open.push(next);
      }
    }
    return seen;
  }
}

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
          if (targetRoom === room) continue;
          // The root names single files, so that Node loads nothing else.
          if (room === 'index.ts') continue;
          expect(arrows[room]).toContain(targetRoom);
          expect(doors, 'the way in of another room').toContain(relative(src, target));
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

  it('has no files that import each other in a circle, types included, but for those known', () => {
    const circles = circlesOf(
      new Map(
        files.map((path) => [
          relative(src, path),
          importsOf(path)
            .filter((specifier) => specifier.startsWith('.'))
            .map((specifier) => relative(src, resolve(dirname(path), specifier))),
        ]),
      ),
    );
    const known = knownCircles.map((line) => line.split(' '));
    const unknown = circles.filter(
      (circle) => !known.some((names) => circle.every((file) => names.includes(file))),
    );
    expect(unknown).toEqual([]);
    // What is gone from the code goes from the list too, so that it cannot come back.
    const gone = known.flat().filter((file) => !circles.flat().includes(file));
    expect(gone).toEqual([]);
  });

  it('finds a circle of files where there is one', () => {
    const graph = { a: ['b'], b: ['c'], c: ['b', 'd'], d: [], e: ['e'] };
    expect(circlesOf(new Map(Object.entries(graph)))).toEqual([['b', 'c'], ['e']]);
  });

  it('has a root of at most 60 names', () => {
    const names = [...codeOf(join(src, 'index.ts')).matchAll(/\{([^}]*)\}/g)].flatMap((match) =>
      (match[1] as string).split(',').filter((name) => name.trim() !== ''),
    );
    expect(names.length).toBeGreaterThan(30);
    expect(names.length).toBeLessThanOrEqual(60);
  });

  it('has entry files that only re-export', () => {
    for (const path of files.filter((file) => /(index|internal)\.ts$/.test(file))) {
      const statements = codeOf(path)
        .replace(/export (type )?(\{[^}]*\}|\*) from '[^']+';/g, '')
        .trim();
      expect(statements, relative(src, path)).toBe('');
    }
  });
});
