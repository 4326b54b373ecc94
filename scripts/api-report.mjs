// Compares the public API of every door with its committed report in etc/; `--write` renews the reports. A type that a
// public one leans on and that no door exports is an error: nobody could name it.
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Extractor, ExtractorConfig } from '@microsoft/api-extractor';

const root = fileURLToPath(new URL('..', import.meta.url));
const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const write = process.argv.includes('--write');
let changed = 0;
const exported = new Set();
let names = 0;
const leanedOn = new Map();
/** The most public names that all doors together may have: the surface does not grow unseen. */
const MOST_NAMES = 330;
mkdirSync(join(root, 'etc'), { recursive: true });

for (const [door, conditions] of Object.entries(manifest.exports)) {
  if (door === './package.json' || door === '.') continue;
  const name = door.slice(2).replaceAll('/', '.');
  const config = ExtractorConfig.prepare({
    configObject: {
      projectFolder: root,
      mainEntryPointFilePath: join(root, conditions.types),
      compiler: { tsconfigFilePath: join(root, 'tsconfig.json') },
      apiReport: {
        enabled: true,
        reportFileName: `${name}.api.md`,
        reportFolder: join(root, 'etc'),
        reportTempFolder: join(root, 'out/api'),
      },
      docModel: { enabled: false },
      dtsRollup: { enabled: false },
      tsdocMetadata: { enabled: false },
      messages: {
        compilerMessageReporting: { default: { logLevel: 'warning' } },
        extractorMessageReporting: {
          default: { logLevel: 'warning', addToApiReportFile: true },
          'ae-missing-release-tag': { logLevel: 'none' },
          'ae-unresolved-link': { logLevel: 'none' },
          // TypeDoc sees to comments; here they would bring in names of built files, which change with every build.
          'ae-undocumented': { logLevel: 'none' },
        },
        tsdocMessageReporting: { default: { logLevel: 'none' } },
      },
    },
    configObjectFullPath: undefined,
    packageJsonFullPath: join(root, 'package.json'),
  });
  const result = Extractor.invoke(config, {
    localBuild: write,
    showVerboseMessages: false,
    messageCallback: (message) => {
      message.handled = !['error'].includes(message.logLevel);
    },
  });
  if (result.apiReportChanged) {
    changed += 1;
    console.log(
      `${name}: ${write ? 'report renewed' : `the API differs from etc/${name}.api.md; run npm run api:write and review the change`}`,
    );
  }
  const report = readFileSync(join(root, 'out/api', `${name}.api.md`), 'utf8');
  for (const [, symbol] of report.matchAll(
    /^export (?:declare )?(?:type|interface|function|const|class) (\w+)/gm,
  )) {
    exported.add(symbol);
    names += 1;
  }
  for (const [, symbol] of report.matchAll(/ae-forgotten-export\) The symbol "([^"]+)"/g))
    leanedOn.set(symbol, [...(leanedOn.get(symbol) ?? []), name]);
  if (!existsSync(join(root, 'etc', `${name}.api.md`))) changed += 1;
}
// The types of `locale` are worked out from the tables of every room: nobody needs a name for the way there.
const nameless = [...leanedOn.keys()].filter(
  (symbol) => !exported.has(symbol) && !leanedOn.get(symbol).every((name) => name === 'locale'),
);
for (const symbol of nameless)
  console.log(`${symbol} is exported by no entry point, and ${leanedOn.get(symbol).join(', ')} lean on it`);
console.log(`${names} public names over all entry points, ${MOST_NAMES} at most`);
console.log(changed === 0 ? 'the API is as reported' : `${changed} reports differ`);
process.exitCode = (changed > 0 && !write) || nameless.length > 0 || names > MOST_NAMES ? 1 : 0;
