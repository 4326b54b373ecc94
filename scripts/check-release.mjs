// The tag, the version and the change log must agree before anything is published.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const read = (path) => readFileSync(fileURLToPath(new URL(`../${path}`, import.meta.url)), 'utf8');
const { version } = JSON.parse(read('package.json'));
const [heading] = read('CHANGELOG.md').match(/^## .*$/m) ?? [''];
const problems = [];

const tag = process.argv[2];
if (tag !== undefined && tag !== `v${version}`) problems.push(`tag ${tag} is not v${version}`);
if (!heading.startsWith(`## ${version}`))
  problems.push(`the change log begins with '${heading}', not with ${version}`);
if (tag !== undefined && heading.includes('not yet released'))
  problems.push(`the change log still says '${heading}'`);

for (const problem of problems) console.error(problem);
console.log(problems.length === 0 ? `ready to release ${version}` : `${problems.length} problems`);
process.exitCode = problems.length === 0 ? 0 : 1;
