// Before anything is published, the tag, the version, the change log and the packed manifest must agree:
// node scripts/check-release.mjs [TARBALL] [TAG]. Within a workflow the manifest must name the workflow's repository.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

const given = process.argv.slice(2).filter((argument) => argument !== '');
const tarball = given.find((argument) => argument.endsWith('.tgz'));
const tag = given.find((argument) => !argument.endsWith('.tgz'));
const manifest = JSON.parse(
  tarball === undefined
    ? readFileSync('package.json', 'utf8')
    : execFileSync('tar', ['-xOf', tarball, 'package/package.json'], { encoding: 'utf8' }),
);
const { version } = manifest;
const [heading] = readFileSync('CHANGELOG.md', 'utf8').match(/^## .*$/m) ?? [''];
const problems = [];

if (tag !== undefined && tag !== `v${version}`) problems.push(`tag ${tag} is not v${version}`);
if (!heading.startsWith(`## ${version}`))
  problems.push(`the change log begins with '${heading}', not with ${version}`);
if (tag !== undefined && heading.includes('not yet released'))
  problems.push(`the change log still says '${heading}'`);

const { GITHUB_SERVER_URL: server, GITHUB_REPOSITORY: repository } = process.env;
if (tarball !== undefined && repository !== undefined) {
  const home = `${server}/${repository}`;
  const expected = { repository: `git+${home}.git`, homepage: `${home}#readme`, bugs: `${home}/issues` };
  const found = {
    repository: manifest.repository?.url,
    homepage: manifest.homepage,
    bugs: manifest.bugs?.url,
  };
  for (const [field, url] of Object.entries(expected)) {
    if (found[field] !== url) problems.push(`${field} of the package is '${found[field]}', not '${url}'`);
  }
}

for (const problem of problems) console.error(problem);
console.log(problems.length === 0 ? `ready to release ${version}` : `${problems.length} problems`);
process.exitCode = problems.length === 0 ? 0 : 1;
