// Every page of the site in a real Chromium: node tests/browser/run.mjs [--site folder] [--only word]
// The site must be built before (npm run docs). Nothing but this machine is ever asked for anything.
import { existsSync, mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';
import { callChecks } from './call.mjs';
import { channelChecks } from './channel.mjs';
import { docsChecks } from './docs.mjs';
import { everyPageChecks } from './every-page.mjs';
import { exchangeChecks } from './exchange.mjs';
import { linkChecks } from './links.mjs';
import { logChecks } from './log.mjs';
import { numberChecks } from './number.mjs';
import { placeChecks } from './place.mjs';
import { serve } from './server.mjs';
import { soundChecks } from './sound.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { values } = parseArgs({ options: { site: { type: 'string' }, only: { type: 'string' } } });
const site = resolve(values.site ?? join(root, 'site'));
if (!existsSync(join(site, 'workbench/index.html'))) {
  console.error(`${site} holds no site: build it first`);
  process.exit(2);
}
const out = join(root, 'out');
mkdirSync(join(out, 'screenshots'), { recursive: true });

const ARGUMENTS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-quic',
  '--no-first-run',
  '--disable-component-update',
  '--disable-sync',
  '--autoplay-policy=no-user-gesture-required',
];

const server = await serve(site);
const openBrowser = (extra = []) =>
  chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    // Playwright mutes sound by itself, and with it the pretended microphone.
    ignoreDefaultArgs: ['--mute-audio'],
    args: [...ARGUMENTS, ...extra],
  });
const shared = await openBrowser();

/** A page whose every error, and every request to elsewhere, is a failure of the check that opened it. */
async function openPage(browser, options = {}) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const faults = [];
  await context.route('**/*', (route) => {
    const url = route.request().url();
    if (url.startsWith(server.address) || /^(?:blob|data):/.test(url)) return route.continue();
    faults.push(`request to ${url}`);
    return route.abort();
  });
  context.on('page', (page) => {
    page.setDefaultTimeout(20_000);
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) faults.push(`console: ${message.text()}`);
    });
    page.on('pageerror', (error) => faults.push(`uncaught: ${error.stack}`));
    page.on('response', (response) => {
      if (response.status() >= 400) faults.push(`${response.status()} for ${response.url()}`);
    });
  });
  return { page: await context.newPage(), context, faults };
}

const checks = [
  ...numberChecks,
  ...channelChecks,
  ...callChecks,
  ...logChecks,
  ...soundChecks,
  ...placeChecks,
  ...exchangeChecks,
  ...everyPageChecks,
  ...docsChecks,
  ...linkChecks,
].filter(({ name }) => values.only === undefined || name.includes(values.only));

let passed = 0;
let failed = 0;
for (const { name, options, browserArgs, run } of checks) {
  const browser = browserArgs === undefined ? shared : await openBrowser(await browserArgs({ out, site }));
  const { page, context, faults } = await openPage(browser, options);
  try {
    const told = await run({
      page,
      context,
      site,
      out,
      at: (path) => server.address + path,
      open: (path) => page.goto(server.address + path),
    });
    if (faults.length > 0) throw new Error(faults.join('\n    '));
    passed++;
    console.log(`ok   ${name}${told === undefined ? '' : ` (${told})`}`);
  } catch (error) {
    failed++;
    console.log(
      `FAIL ${name}\n    ${error.stack ?? error}${faults.length > 0 ? `\n    ${faults.join('\n    ')}` : ''}`,
    );
  }
  await context.close();
  if (browser !== shared) await browser.close();
}
await shared.close();
server.close();
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
