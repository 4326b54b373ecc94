// Runs the recipes for servers as they stand in the docs, in a project with the packed package: a serial port by a
// general serial package on a pair of pseudo-terminals, a socket that gives a million lines to a page of events, and a
// handler at the edge in a context without Node.
import assert from 'node:assert/strict';
import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { createContext, SourceTextModule } from 'node:vm';
import { buildSync } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'seahail-node-recipes-'));
const run = (command, args, cwd = folder) =>
  execFileSync(command, args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

/** The file of a recipe, by the name in its fence. */
function file(recipe, name) {
  const markdown = readFileSync(join(root, 'docs/recipe', `${recipe}.md`), 'utf8');
  const [, text] = markdown.match(
    new RegExp(`^\`\`\`ts ${name}\\.ts(?: not run)?\\n([\\s\\S]*?)^\`\`\`$`, 'm'),
  );
  return text;
}

function bundled(name, text, options) {
  writeFileSync(join(folder, `${name}.ts`), text);
  const outfile = join(folder, `${name}.mjs`);
  buildSync({
    entryPoints: [join(folder, `${name}.ts`)],
    outfile,
    bundle: true,
    format: 'esm',
    logLevel: 'error',
    ...options,
  });
  return outfile;
}

const onNode = { platform: 'node', packages: 'external' };
const lineOf = (stream, pattern) =>
  new Promise((found, failed) => {
    const timer = setTimeout(() => failed(new Error(`no line like ${pattern}`)), 20_000);
    createInterface({ input: stream }).on('line', (line) => {
      if (!pattern.test(line)) return;
      clearTimeout(timer);
      found(line);
    });
  });

const ALERT = '$CDDSC,12,2329992180,,05,00,1561800627,1405,,,S,*23\r\n';

/** Two pseudo-terminals, one at each end of a cable: names on standard output, what is typed comes out at the first. */
const CABLE = `
import os, pty, sys, tty
near, far = pty.openpty()
tty.setraw(far)
print(os.ttyname(far), flush=True)
for line in sys.stdin.buffer:
    os.write(near, line)
`;

const checks = {
  'a serial port': async () => {
    writeFileSync(
      join(folder, 'watch.ts'),
      file('serial-port', 'watch').replace(/\nconst watch = [\s\S]*/, ''),
    );
    const script = bundled('serial', file('serial-port', 'serial'), onNode);
    const cable = spawn('python3', ['-c', CABLE], { stdio: ['pipe', 'pipe', 'inherit'] });
    const path = await lineOf(cable.stdout, /^\//);
    const listener = spawn(process.execPath, [script, path], {
      cwd: folder,
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const heard = lineOf(listener.stdout, /Distress alert from 232999218: sinking/);
    const talk = setInterval(() => cable.stdin.write(ALERT), 500);
    try {
      assert.match(await heard, /^(provisional|final|heard again)/);
    } finally {
      clearInterval(talk);
      listener.kill();
      cable.kill();
    }
  },
  'a socket that gives a million lines to a page': async () => {
    const { serveCalls } = await import(
      pathToFileURL(bundled('sentences-to-events', file('tcp-to-browser', 'sentences-to-events'), onNode))
    );
    const LINES = 1_000_000;
    const EVERY = 1000;
    const wind = '$WIMWV,214.8,R,0.1,K,A*28\r\n';
    // Each alert from another vessel, so that none is a repeat; sums as the standard makes them.
    const alert = (n) => {
      const body = `CDDSC,12,2329${String(n).padStart(5, '0')}0,,05,00,1561800627,1405,,,S,`;
      const sum = [...body].reduce((all, sign) => all ^ sign.charCodeAt(0), 0);
      return `$${body}*${sum.toString(16).toUpperCase().padStart(2, '0')}\r\n`;
    };
    let go;
    const page = new Promise((resolve) => {
      go = resolve;
    });
    const gateway = createServer(async (socket) => {
      await page;
      for (let n = 0; n < LINES / EVERY; n++) {
        if (!socket.write(wind.repeat(EVERY - 1) + alert(n))) await once(socket, 'drain');
      }
      socket.end();
    }).listen(0, '127.0.0.1');
    await once(gateway, 'listening');
    const server = serveCalls({ host: '127.0.0.1', port: gateway.address().port }, '232999871');
    await once(server, 'listening');
    const response = await new Promise((resolve) =>
      request({ host: '127.0.0.1', port: server.address().port, path: '/calls' }, resolve).end(),
    );
    go();
    const vessels = new Set();
    let most = 0;
    for await (const line of createInterface({ input: response })) {
      const [, vessel] = /Distress alert from (\d{9})/.exec(line) ?? [];
      if (vessel === undefined) continue;
      vessels.add(vessel);
      most = Math.max(most, process.memoryUsage().heapUsed);
    }
    gateway.close();
    server.close();
    assert.equal(vessels.size, LINES / EVERY);
    assert.ok(most < 200e6, `${Math.round(most / 1e6)} MB`);
  },
  'a handler without Node': async () => {
    const text = readFileSync(bundled('edge', file('edge', 'edge'), { platform: 'neutral' }), 'utf8');
    const handler = new SourceTextModule(text, { context: createContext({ URL, Request, Response }) });
    await handler.link(() => assert.fail('something is imported'));
    await handler.evaluate();
    const ask = async (mmsi, language) => {
      const response = handler.namespace.default.fetch(
        new Request(`https://boats.example/?mmsi=${mmsi}`, { headers: { 'accept-language': language } }),
      );
      return [response.status, response.headers.get('content-language'), await response.json()];
    };
    assert.deepEqual(await ask('232-999-871', 'de'), [200, null, { mmsi: '232999871', kind: 'ship' }]);
    const [, answer] = /```json\n(.*)\n```/.exec(readFileSync(join(root, 'docs/recipe/edge.md'), 'utf8'));
    assert.deepEqual(await ask('2329990', 'de-CH,de;q=0.9'), [422, 'de', JSON.parse(answer)]);
    assert.equal((await ask('2329990', 'sv'))[1], 'en');
  },
};

const [{ filename }] = JSON.parse(run('npm', ['pack', '--json', '--pack-destination', folder], root));
writeFileSync(join(folder, 'package.json'), '{"private":true,"type":"module"}');
run('npm', ['install', '--no-audit', '--no-fund', join(folder, filename), 'serialport@13.0.0']);
let failed = 0;
for (const [name, check] of Object.entries(checks)) {
  try {
    await check();
    console.log(`ok   ${name}`);
  } catch (error) {
    failed++;
    console.log(`FAIL ${name}\n${error.stack}`);
  }
}
rmSync(folder, { recursive: true, force: true });
console.log(`${Object.keys(checks).length - failed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
