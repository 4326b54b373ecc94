// Builds the files of the recipes, as they stand in the docs, in a real project with a build tool and frameworks, and
// tries them in a browser: forms by typing, the sound recipe by a pretended microphone that plays a call. The recipe of
// Jest in two projects of its own.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { modulate, writeWav } from 'seahail/audio';
import { encodeCall } from 'seahail/burst';
import { composeTestCall } from 'seahail/call';
import { serve } from '../tests/browser/server.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const recipes = join(root, 'docs/recipe');
/** Recipes that another project tries: {@link jest} below, scripts/check-node-recipes.mjs. */
const APART = ['jest.md', 'serial-port.md', 'tcp-to-browser.md', 'edge.md'];
const PACKAGES = [
  'vite@7.3.8',
  'typescript@5.9.3',
  '@vitejs/plugin-react@5.2.0',
  'react@19.3.1',
  'react-dom@19.3.1',
  '@types/react@19',
  '@types/react-dom@19',
  'react-hook-form@7.92.0',
  '@hookform/resolvers@7.0.9',
  'zod@4.6.7',
  '@vitejs/plugin-vue@6.0.11',
  'vue@3.5.45',
  '@sveltejs/vite-plugin-svelte@6.2.3',
  'svelte@5.57.3',
];

/** The page that holds the files of the recipes: all that is not theirs. */
const HARNESS = {
  'index.html': `<!doctype html><html lang="en"><title>Recipes</title><link rel="icon" href="data:,">
<div id="react"></div><div id="friend"></div><div id="vue"></div><div id="svelte"></div>
<button id="listen">Listen</button><pre id="kept"></pre><pre id="heard"></pre>
<script type="module" src="./main.tsx"></script></html>`,
  'main.tsx': `import { createRoot } from 'react-dom/client';
import { mount } from 'svelte';
import { createApp } from 'vue';
import { FriendForm } from './FriendForm';
import { IdentityField } from './IdentityField';
import SvelteField from './IdentityField.svelte';
import VueField from './IdentityField.vue';
import { listen } from './listen';

const at = (id: string) => document.querySelector('#' + id) as HTMLElement;
const print = (id: string) => (text: string) => at(id).append(text + '\\n');
createRoot(at('react')).render(<IdentityField onIdentity={(mmsi) => print('kept')('react ' + mmsi)} />);
createRoot(at('friend')).render(<FriendForm onFriend={(friend) => print('kept')(JSON.stringify(friend))} />);
createApp(VueField).mount(at('vue'));
mount(SvelteField, { target: at('svelte') });
at('listen').addEventListener('click', () => void listen(print('heard')));
`,
  'parts.d.ts': `declare module '*.svelte' { const part: import('svelte').Component; export default part; }
declare module '*.vue' { const part: import('vue').Component; export default part; }
`,
  'vite.config.mjs': `import { svelte } from '@sveltejs/vite-plugin-svelte';
import react from '@vitejs/plugin-react';
import vue from '@vitejs/plugin-vue';
export default { base: './', logLevel: 'warn', plugins: [react(), vue(), svelte()], worker: { format: 'es' } };
`,
  'svelte.config.js': `import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';
export default { preprocess: vitePreprocess() };
`,
  'tsconfig.json': JSON.stringify({
    compilerOptions: {
      target: 'ES2022',
      lib: ['ES2023', 'DOM', 'DOM.Iterable'],
      module: 'ESNext',
      moduleResolution: 'Bundler',
      jsx: 'react-jsx',
      strict: true,
      noEmit: true,
      skipLibCheck: true,
      types: [],
    },
    include: ['*.ts', '*.tsx'],
  }),
};

/** Every fence of the recipes that names a file. */
function filesOf(markdown) {
  return [...markdown.matchAll(/^```\w+ (\S+\.\w+)(?: not run)?\n([\s\S]*?)^```$/gm)].map(
    ([, name, text]) => [name, text],
  );
}

const folder = mkdtempSync(join(tmpdir(), 'seahail-recipes-'));
const run = (command, args, cwd = folder) =>
  execFileSync(command, args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

let packed;
function tarball() {
  packed ??= JSON.parse(run('npm', ['pack', '--json', '--pack-destination', folder], root))[0].filename;
  return join(folder, packed);
}

function build() {
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ private: true, type: 'module' }));
  run('npm', ['install', '--no-audit', '--no-fund', tarball(), ...PACKAGES]);
  const files = readdirSync(recipes)
    .filter((name) => !APART.includes(name))
    .flatMap((name) => filesOf(readFileSync(join(recipes, name), 'utf8')));
  for (const [name, text] of [...files, ...Object.entries(HARNESS)]) writeFileSync(join(folder, name), text);
  run(process.execPath, [join(folder, 'node_modules/typescript/bin/tsc'), '-p', folder]);
  run(process.execPath, [join(folder, 'node_modules/vite/bin/vite.js'), 'build']);
  return files.map(([name]) => name);
}

/** What the pretended microphone plays round and round. */
function microphone() {
  const call = composeTestCall({ from: '232999871', to: '002329990' });
  const samples = modulate(encodeCall(call), { sampleRate: 48_000, leadInSeconds: 1, tailSeconds: 1 });
  const path = join(folder, 'microphone.wav');
  writeFileSync(path, writeWav(samples, { sampleRate: 48_000 }));
  return path;
}

/** The missing zeros of a coast station are offered, and taken when pressed: ITU-R M.585, 00MIDxxxx. */
const field = (part) => async (page) => {
  const input = page.locator(`#${part} input`);
  await input.fill('2329990');
  await input.blur();
  const offer = page.locator(`#${part} button`);
  assert.match((await offer.textContent()) ?? '', /Did you mean 002329990\?/);
  await offer.click();
  assert.equal(await input.inputValue(), '002329990');
};

const checks = {
  'React field': async (page) => {
    await field('react')(page);
    assert.match(await page.locator('#kept').textContent(), /react 002329990/);
  },
  'React form of three fields with a resolver': async (page) => {
    await page.getByLabel('MMSI of the friend').fill('023299905');
    await page.getByLabel('Channel').fill('16');
    await page.getByRole('button', { name: 'Keep' }).click();
    await page.getByText('The boat needs a name').waitFor();
    await page.getByText('expected ship or hand-held radio').waitFor();
    await page.getByText(/Channel 16/).waitFor();
    await page.getByLabel('Boat').fill('Tern of Ardle');
    await page.getByLabel('MMSI of the friend').fill('23299914l');
    await page.getByRole('button', { name: 'Take 232999141' }).click();
    await page.getByLabel('Channel').fill('ch 72');
    await page.getByRole('button', { name: 'Keep' }).click();
    await page.getByText('{"name":"Tern of Ardle","mmsi":"232999141","channel":"72"}').waitFor();
  },
  'Vue field': field('vue'),
  'Svelte field': field('svelte'),
  'microphone, worklet and worker': async (page) => {
    await page.locator('#listen').click();
    await page.getByText(/^(clean|repaired): Test call from 232999871 to 002329990/m).waitFor();
  },
};

const JEST = {
  babel: ['babel-jest@30', '@babel/core@7', '@babel/preset-env@7', '@babel/preset-typescript@7'],
  ts: ['ts-jest@29', 'typescript@5.9.3'],
};

/** The recipe of Jest in a project of its own, by one of its two settings. */
function jest(way) {
  const cwd = join(folder, `jest-${way}`);
  mkdirSync(cwd);
  writeFileSync(join(cwd, 'package.json'), '{"private":true}');
  run('npm', ['install', '--no-audit', '--no-fund', tarball(), 'jest@30', ...JEST[way]], cwd);
  for (const [name, text] of filesOf(readFileSync(join(recipes, 'jest.md'), 'utf8')))
    writeFileSync(join(cwd, name), text);
  run(process.execPath, [join(cwd, 'node_modules/jest/bin/jest.js'), '-c', `jest.${way}.config.cjs`], cwd);
}

let failed = 0;
async function tried(name, check) {
  try {
    await check();
    console.log(`ok   ${name}`);
  } catch (error) {
    failed++;
    console.log(`FAIL ${name}\n${error.stdout ?? ''}${error.stderr ?? ''}${error.stack}`);
  }
}

const built = build();
console.log(`built ${built.join(', ')}`);
const server = await serve(join(folder, 'dist'));
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  ignoreDefaultArgs: ['--mute-audio'],
  args: [
    '--headless',
    '--no-sandbox',
    '--autoplay-policy=no-user-gesture-required',
    '--use-fake-ui-for-media-stream',
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-audio-capture=${microphone()}`,
  ],
});
const page = await browser.newPage({ permissions: ['microphone'] });
const faults = [];
page.on('pageerror', (error) => faults.push(String(error)));
page.on('console', (message) => {
  if (message.type() === 'error') faults.push(message.text());
});
page.setDefaultTimeout(30_000);
await page.goto(`${server.address}index.html`);
for (const [name, check] of Object.entries(checks)) {
  await tried(name, async () => {
    await check(page);
    assert.deepEqual(faults, []);
  });
}
await browser.close();
server.close();
for (const way of Object.keys(JEST)) await tried(`Jest with ${way}-jest`, () => jest(way));
rmSync(folder, { recursive: true, force: true });
console.log(`${Object.keys(checks).length + 2 - failed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
