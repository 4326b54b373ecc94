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
const leanedOn = new Map();
/** Types that no door exports yet: the list may only get shorter, to none. */
const NAMELESS_YET = new Set([
  ...['Announcement', 'CallBase', 'ChannelProposal', 'DistressDetails', 'Filler', 'NameIn', 'Plain'],
  ...['categoryTable', 'endTable', 'firstTelecommandTable', 'formatTable', 'natureTable', 'reasonTable'],
  ...['secondTelecommandTable', 'At', 'DialogueBase', 'EffectBase', 'OnDialogue'],
]);
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
  for (const [, symbol] of report.matchAll(/^export (?:type|interface|function|const) (\w+)/gm))
    exported.add(symbol);
  for (const [, symbol] of report.matchAll(/ae-forgotten-export\) The symbol "([^"]+)"/g))
    leanedOn.set(symbol, [...(leanedOn.get(symbol) ?? []), name]);
  if (!existsSync(join(root, 'etc', `${name}.api.md`))) changed += 1;
}
const nameless = [...leanedOn.keys()].filter((symbol) => !exported.has(symbol));
const unexpected = [
  ...nameless.filter((symbol) => !NAMELESS_YET.has(symbol)),
  ...[...NAMELESS_YET].filter((symbol) => !nameless.includes(symbol)),
];
for (const symbol of unexpected) {
  console.log(
    NAMELESS_YET.has(symbol)
      ? `${symbol} can be named now: take it off the list in scripts/api-report.mjs`
      : `${symbol} is exported by no entry point, and ${leanedOn.get(symbol).join(', ')} lean on it`,
  );
}
console.log(changed === 0 ? 'the API is as reported' : `${changed} reports differ`);
process.exitCode = (changed > 0 && !write) || unexpected.length > 0 ? 1 : 0;
