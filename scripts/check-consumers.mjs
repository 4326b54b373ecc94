// Installs the packed tarball into empty projects and uses it the ways people do: import, require, four bundlers,
// older and newer TypeScript with every way to resolve modules, and other run times where the registry has them.
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runInNewContext } from 'node:vm';

const root = fileURLToPath(new URL('..', import.meta.url));
const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const doors = Object.keys(manifest.exports).filter((door) => door !== './package.json');
const specifiers = doors.map((door) => (door === '.' ? 'seahail' : `seahail${door.slice(1)}`));

const folder = mkdtempSync(join(tmpdir(), 'seahail-consumers-'));
const run = (command, args, cwd) =>
  execFileSync(command, args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
const failures = [];

function check(name, task) {
  try {
    const said = task();
    console.log(`ok    ${name}${said ? `  ${said}` : ''}`);
  } catch (error) {
    failures.push(name);
    console.log(`FAIL  ${name}\n${error.stdout ?? ''}${error.stderr ?? error.stack ?? error}`);
  }
}

function project(name, packages, files) {
  const cwd = join(folder, name);
  mkdirSync(cwd);
  writeFileSync(join(cwd, 'package.json'), JSON.stringify({ name, version: '1.0.0', private: true }));
  run('npm', ['install', '--no-audit', '--no-fund', '--ignore-scripts', tarball, ...packages], cwd);
  for (const [path, text] of Object.entries(files)) writeFileSync(join(cwd, path), text);
  return cwd;
}

const [{ filename }] = JSON.parse(run('npm', ['pack', '--json', '--pack-destination', folder], root));
const tarball = join(folder, filename);

const WANTED = '232878000 ship';
const use = `const r = parseIdentity('MMSI 232-878-000');
if (!r.ok) throw new Error('refused');
console.log(r.value.mmsi + ' ' + r.value.kind);`;
const importAll = specifiers.map((name, index) => `import * as door${index} from '${name}';`).join('\n');
const countAll = specifiers
  .map(
    (_, index) =>
      `if (Object.keys(door${index}).length === 0 && ${index} !== -1) throw new Error('${specifiers[index]} is empty');`,
  )
  .join('\n');

/** A call as sound and back, which takes the burst and audio code through everything they use. */
const ON_THE_AIR = `const { composePositionRequest } = door${specifiers.indexOf('seahail/call')};
const { encodeCall } = door${specifiers.indexOf('seahail/burst')};
const { createReceiver, modulate } = door${specifiers.indexOf('seahail/audio')};
const call = composePositionRequest({ from: '232999871', to: '232999142' });
const onReception = ({ reception }) => (globalThis.heard = reception.call.kind + ' ' + reception.quality.verdict);
const receiver = createReceiver({ sampleRate: 48000, onReception });
receiver.push(modulate(encodeCall(call), { sampleRate: 48000, leadInSeconds: 0.1, tailSeconds: 0.3 }));
receiver.flush();`;

const runtime = project('runtime', [], {
  'use.mjs': `import { parseIdentity } from 'seahail/identity';\n${use}`,
  'use-root.mjs': `import { parseIdentity } from 'seahail';\n${use}`,
  'use.cjs': `const { parseIdentity } = require('seahail/identity');\n${use}`,
  'doors.mjs': `${importAll}\n${countAll}\nconsole.log('all');`,
  'doors.cjs': `for (const name of ${JSON.stringify(specifiers)}) if (Object.keys(require(name)).length === 0) throw new Error(name);\nconsole.log('all');`,
});
const expectOutput = (command, args, cwd, wanted) => {
  const printed = run(command, args, cwd).trim();
  if (printed !== wanted) throw new Error(`printed '${printed}', wanted '${wanted}'`);
};
for (const file of ['use.mjs', 'use-root.mjs', 'use.cjs'])
  check(`node ${file}`, () => expectOutput('node', [file], runtime, WANTED));
for (const file of ['doors.mjs', 'doors.cjs'])
  check(`node ${file}`, () => expectOutput('node', [file], runtime, 'all'));

const bundles = project(
  'bundles',
  [
    'esbuild@0.28.2',
    'rollup@4',
    '@rollup/plugin-node-resolve@16',
    '@rollup/plugin-commonjs@28',
    'webpack@5',
    'vite@7',
  ],
  {
    'entry.mjs': `import { parseIdentity } from 'seahail';\n${use}`,
    'rollup.config.mjs': `import resolve from '@rollup/plugin-node-resolve';\nimport commonjs from '@rollup/plugin-commonjs';\nexport default { input: 'entry.mjs', output: { file: 'out/rollup.mjs', format: 'es' }, plugins: [resolve(), commonjs()] };`,
    'webpack.cjs': `require('webpack')({ mode: 'production', entry: './entry.mjs', target: 'web', output: { path: __dirname + '/out', filename: 'webpack.cjs' } }, (error, stats) => { if (error || stats.hasErrors()) { console.error(error ?? stats.toString()); process.exit(1); } });`,
    'vite.config.mjs': `export default { logLevel: 'error', build: { outDir: 'out/vite', lib: { entry: 'entry.mjs', formats: ['es'], fileName: () => 'vite.mjs' } } };`,
  },
);
const bin = (name) => join(bundles, 'node_modules/.bin', name);
const size = (path) => `${readFileSync(join(bundles, path)).length} bytes`;
const bundlers = {
  'out/esbuild.mjs': [process.execPath, [join(bundles, 'bundle-esbuild.mjs')]],
  'out/rollup.mjs': [bin('rollup'), ['-c', 'rollup.config.mjs', '--silent']],
  'out/webpack.cjs': [process.execPath, ['webpack.cjs']],
  'out/vite/vite.mjs': [bin('vite'), ['build']],
};
writeFileSync(
  join(bundles, 'bundle-esbuild.mjs'),
  `import { buildSync } from 'esbuild';\nbuildSync({ entryPoints: ['entry.mjs'], bundle: true, minify: true, format: 'esm', outfile: 'out/esbuild.mjs' });`,
);
for (const [output, [command, args]] of Object.entries(bundlers)) {
  check(`bundle ${output}`, () => {
    run(command, args, bundles);
    expectOutput('node', [output], bundles, WANTED);
    if (readFileSync(join(bundles, output), 'utf8').includes('Geodesic'))
      throw new Error('the bundle holds the geodesic code');
    return size(output);
  });
}

// A worker at the edge, or any engine that is no Node: all entries together need the language and TextDecoder.
check('every entry without Node', () => {
  writeFileSync(
    join(bundles, 'all.mjs'),
    `${importAll}\nglobalThis.count = [${specifiers.map((_, index) => `door${index}`)}].length;\n${ON_THE_AIR}`,
  );
  writeFileSync(
    join(bundles, 'bundle-all.mjs'),
    `import { buildSync } from 'esbuild';\nbuildSync({ entryPoints: ['all.mjs'], bundle: true, format: 'iife', platform: 'neutral', mainFields: ['module', 'main'], logLevel: 'error', outfile: 'out/all.js' });`,
  );
  run(process.execPath, ['bundle-all.mjs'], bundles);
  const bare = { TextDecoder };
  runInNewContext(readFileSync(join(bundles, 'out/all.js'), 'utf8'), bare);
  if (bare.heard !== 'position-request clean') throw new Error(`heard ${bare.heard}`);
  return `${bare.count} entries`;
});

// What needs no network pays nothing for it: a word of its clause stands in every part that reads one.
for (const [door, names] of [
  ['identity', 'parseIdentity'],
  ['channel', 'findChannel'],
  ['sentence', 'createSentenceReader, writeSentences'],
]) {
  check(`bundle seahail/${door} without the network`, () => {
    writeFileSync(
      join(bundles, `${door}.mjs`),
      `import { ${names} } from 'seahail/${door}';\nconsole.log(${names});`,
    );
    writeFileSync(
      join(bundles, 'bundle-door.mjs'),
      `import { buildSync } from 'esbuild';\nbuildSync({ entryPoints: ['${door}.mjs'], bundle: true, minify: true, format: 'esm', outfile: 'out/${door}.mjs' });`,
    );
    run(process.execPath, ['bundle-door.mjs'], bundles);
    const text = readFileSync(join(bundles, 'out', `${door}.mjs`), 'utf8');
    if (/IEC 61162-3|Rapid Update/.test(text)) throw new Error('the bundle holds the network');
    return size(`out/${door}.mjs`);
  });
}

const types = project('types', [], {
  'use.mts': `import type { Call } from 'seahail';\nimport { parseIdentity, type Identity } from 'seahail/identity';\nimport type { TextParams } from 'seahail/locale';\n${importAll}\nconst r = parseIdentity('232878000');\nexport const kind: Identity['kind'] | null = r.ok ? r.value.kind : null;\nexport const calls: readonly Call[] = [];\n// @ts-expect-error an identity is text, never a number\nexport const wrong: string = r.ok ? r.value.mmsi * 1 : '';\nexport const leg: TextParams['channel-no-legs'] = { leg: 'ship' };\n// @ts-expect-error no such leg\nexport const noLeg: TextParams['channel-no-legs'] = { leg: 'aircraft' };\nconsole.log(${specifiers.map((_, index) => `door${index}`).join(', ')});\n`,
});
writeFileSync(join(types, 'use.ts'), readFileSync(join(types, 'use.mts')));
writeFileSync(
  join(types, 'use.cts'),
  `import { parseIdentity } from 'seahail/identity';\nimport seahail = require('seahail');\nexport const both = [parseIdentity, seahail.parseIdentity];\n`,
);
const settings = (module, resolution, file = 'use.mts') =>
  JSON.stringify({
    compilerOptions: {
      target: 'ES2022',
      lib: ['ES2022', 'DOM'],
      module,
      moduleResolution: resolution,
      strict: true,
      exactOptionalPropertyTypes: true,
      skipLibCheck: false,
      noEmit: true,
      types: [],
    },
    files: [file],
  });
writeFileSync(join(types, 'nodenext.json'), settings('NodeNext', 'NodeNext'));
writeFileSync(join(types, 'bundler.json'), settings('ESNext', 'Bundler'));
// The settings of before 2022, which read no `exports`: the package's typesVersions show them the way.
writeFileSync(join(types, 'node.json'), settings('ESNext', 'Node10', 'use.ts'));
// A CommonJS file of a project that Node runs: TypeScript has allowed it to import ES modules since 5.8.
writeFileSync(join(types, 'commonjs.json'), settings('NodeNext', 'NodeNext', 'use.cts'));
for (const version of ['5.4.5', '5.9.3', '6.0.3', '7.0.2']) {
  const compiler = join(folder, `typescript-${version}`);
  mkdirSync(compiler);
  writeFileSync(join(compiler, 'package.json'), '{"private":true}');
  run('npm', ['install', '--no-audit', '--no-fund', `typescript@${version}`], compiler);
  // TypeScript 6 warns of the oldest settings, and 7 has them no longer.
  const others = { '5.4.5': ['node'], '5.9.3': ['node', 'commonjs'] }[version] ?? ['commonjs'];
  for (const resolution of ['nodenext', 'bundler', ...others])
    check(`TypeScript ${version} ${resolution}`, () =>
      run(join(compiler, 'node_modules/.bin/tsc'), ['-p', `${resolution}.json`], types),
    );
}

for (const [name, args] of [
  ['deno', ['run', '--allow-read', 'use.mjs']],
  ['bun', ['run', 'use.mjs']],
]) {
  const cwd = join(folder, `with-${name}`);
  mkdirSync(cwd);
  writeFileSync(join(cwd, 'package.json'), '{"private":true}');
  try {
    run('npm', ['install', '--no-audit', '--no-fund', name], cwd);
    const command = join(cwd, 'node_modules/.bin', name);
    run(command, ['--version'], cwd);
    check(`${name} use.mjs`, () => expectOutput(command, args, runtime, WANTED));
  } catch (error) {
    console.log(
      `--    ${name} cannot be had from the registry here: ${String(error.message).split('\n')[0]}`,
    );
  }
}

rmSync(folder, { recursive: true, force: true });
console.log(
  failures.length === 0 ? 'every consumer is content' : `${failures.length} failed: ${failures.join(', ')}`,
);
process.exitCode = failures.length === 0 ? 0 : 1;
