import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');
const folder = mkdtempSync(join(tmpdir(), 'seahail-release-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// The variables that GitHub sets for every step of a workflow, with an invented repository.
const workflow = { GITHUB_SERVER_URL: 'https://github.com', GITHUB_REPOSITORY: 'skerra/seahail' };
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };

const run = (script: string, args: readonly string[], env: Record<string, string>) =>
  spawnSync(process.execPath, [join(root, 'scripts', script), ...args], {
    cwd: folder,
    encoding: 'utf8',
    env: { PATH: process.env['PATH'] ?? '', ...env },
  });
const pack = (): void => {
  spawnSync('mkdir', ['-p', 'package'], { cwd: folder });
  copyFileSync(join(folder, 'package.json'), join(folder, 'package/package.json'));
  spawnSync('tar', ['-czf', 'packed.tgz', 'package'], { cwd: folder });
};

describe('what is packed for release', () => {
  copyFileSync(join(root, 'package.json'), join(folder, 'package.json'));
  writeFileSync(join(folder, 'CHANGELOG.md'), `# Change log\n\n## ${version} (2026-08-14)\n`);

  // npm answers E422 to a package with provenance whose repository is missing or another's; a dry run does not show it.
  it('is refused while it does not name the repository of the workflow', () => {
    pack();
    const { status, stderr } = run('check-release.mjs', ['packed.tgz', `v${version}`], workflow);
    expect(status).toBe(1);
    expect(stderr).toContain("repository of the package is 'undefined'");
  });

  it('names the repository of the workflow that packs it', () => {
    expect(run('fill-repository.mjs', [], workflow).status).toBe(0);
    expect(JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))).toMatchObject({
      repository: { type: 'git', url: 'git+https://github.com/skerra/seahail.git' },
      homepage: 'https://github.com/skerra/seahail#readme',
      bugs: { url: 'https://github.com/skerra/seahail/issues' },
    });
    pack();
    expect(run('check-release.mjs', ['packed.tgz', `v${version}`], workflow)).toMatchObject({ status: 0 });
  });

  it('is refused from another repository, and with another tag', () => {
    const elsewhere = { ...workflow, GITHUB_REPOSITORY: 'somebody/seahail' };
    expect(run('check-release.mjs', ['packed.tgz', `v${version}`], elsewhere).status).toBe(1);
    expect(run('check-release.mjs', ['packed.tgz', 'v9.9.9'], workflow).status).toBe(1);
  });

  it('is not filled in outside a workflow', () => {
    expect(run('fill-repository.mjs', [], {}).status).toBe(1);
  });
});

describe('the release workflow', () => {
  const text = readFileSync(join(root, '.github/workflows/release.yml'), 'utf8');
  const publish = text.slice(text.indexOf('\n  publish:'));

  it('gives the right to publish to one job, which runs no script of the repository', () => {
    expect(text.match(/id-token: write/g)).toHaveLength(1);
    expect(publish).toContain('id-token: write');
    for (const command of publish.match(/(?<=run: ).*/g) ?? []) {
      expect(command).not.toMatch(/npm (ci|test|run|pack|audit)|node |bash |git /);
      if (command.startsWith('npm')) expect(command).toContain('--ignore-scripts');
    }
    expect(publish).toContain('sha256sum --check');
  });
});
