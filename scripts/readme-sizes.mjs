// Measures the imports of .size-limit.json and writes the table of the README; `--check` only compares,
// and lets a twentieth pass.
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const readme = fileURLToPath(new URL('../README.md', import.meta.url));
const sizeLimit = fileURLToPath(new URL('../node_modules/size-limit/bin.js', import.meta.url));
const run = spawnSync(process.execPath, [sizeLimit, '--json'], { encoding: 'utf8' });
const measured = JSON.parse(run.stdout);
const limits = JSON.parse(
  readFileSync(fileURLToPath(new URL('../.size-limit.json', import.meta.url)), 'utf8'),
);

const rows = measured.map(({ name, size }) => {
  const { limit } = limits.find((entry) => entry.name === name);
  return `| ${name} | ${(size / 1000).toFixed(1)} kB | ${limit} |`;
});
const table = ['| import | minified and gzipped | budget |', '|---|---|---|', ...rows].join('\n');
const text = readFileSync(readme, 'utf8');
const renewed = text.replace(/(<!-- sizes -->\n)[\s\S]*?(<!-- \/sizes -->)/, `$1${table}\n$2`);
if (process.argv.includes('--check')) {
  const stale = measured.filter(({ name, size }) => {
    const shown = text.split('\n').find((line) => line.startsWith(`| ${name} |`));
    return !(Math.abs(Number.parseFloat(shown?.split('|')[2]) * 1000 - size) <= size / 20);
  });
  console.log(
    stale.length === 0
      ? 'the sizes in the README are true'
      : `the README is out of date on ${stale.map(({ name }) => name).join(', ')}: run npm run sizes`,
  );
  process.exitCode = stale.length === 0 ? 0 : 1;
} else {
  writeFileSync(readme, renewed);
}
