// Writes into package.json where it is published from, as the workflow that runs this says:
// npm refuses provenance for a package whose `repository` is another than the workflow's, or missing.
import { readFileSync, writeFileSync } from 'node:fs';

const { GITHUB_SERVER_URL: server, GITHUB_REPOSITORY: repository } = process.env;
if (!server || !/^[\w.-]+\/[\w.-]+$/.test(repository ?? '')) {
  console.error('GITHUB_SERVER_URL and GITHUB_REPOSITORY are needed, as a workflow has them');
  process.exit(1);
}
const home = `${server}/${repository}`;
const manifest = JSON.parse(readFileSync('package.json', 'utf8'));
manifest.repository = { type: 'git', url: `git+${home}.git` };
manifest.homepage = `${home}#readme`;
manifest.bugs = { url: `${home}/issues` };
writeFileSync('package.json', `${JSON.stringify(manifest, null, 2)}\n`);
console.log(`package.json says ${home}`);
