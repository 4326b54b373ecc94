// A test runner for Stryker: one room's test files, bundled and run in the runner's own process.
import { cpSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { build } from 'esbuild';
import fc from 'fast-check';
import { beginFile, collected } from './test-interface.mjs';

/** A property is tried this often: a mutant lives or dies by a few examples, and there are thousands of mutants. */
const RUNS = 20;
/** A test slower than this is left out for the room: it would be put to every survivor. */
const SLOW_MS = 1500;
/** What the tests may take together, instrumented: the slowest are left out until they do. An endless mutant gets half as much again. */
const BUDGET_MS = 30_000;
/** A mutant in what runs at load is put to the tests for so long before all is loaded again with it. */
const PATIENCE_MS = 1000;

const here = (file) => fileURLToPath(new URL(file, import.meta.url));
const stryker = () => {
  globalThis.__stryker__ ??= {};
  return globalThis.__stryker__;
};

class RoomTests {
  /** id → test */
  #tests = new Map();
  /** id → what it takes without a mutant */
  #times = new Map();
  #files = [];
  #bundle = join('out', `mutation-${process.pid}`);
  #copies = 0;
  /** Mutants in code that runs while tests and room are loaded. */
  #metAtLoad = new Set();

  /** Every mutant finds tests and room loaded without one, or loads them again itself: no new process is needed. */
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    const folder = join('tests', process.env.ROOM);
    this.#files = readdirSync(folder).filter((file) => file.endsWith('.test.ts'));
    await build({
      absWorkingDir: process.cwd(),
      entryPoints: this.#files.map((file) => join(folder, file)),
      bundle: true,
      splitting: true,
      format: 'esm',
      platform: 'node',
      target: 'node20',
      packages: 'external',
      outdir: this.#bundle,
      outExtension: { '.js': '.mjs' },
      logLevel: 'error',
      plugins: [{ name: 'test-interface', setup: standIn }],
    });
    fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 20260814 });
    await this.#load();
    this.#metAtLoad = new Set(Object.keys(stryker().mutantCoverage?.static ?? {}));
  }

  /** Loads tests and room anew, from a copy: what was loaded stays loaded, with whatever a mutant left in it. */
  async #load() {
    this.#copies += 1;
    const folder = `${this.#bundle}-${this.#copies}`;
    cpSync(this.#bundle, folder, { recursive: true });
    collected.length = 0;
    this.#tests.clear();
    for (const file of this.#files) {
      beginFile(file);
      await import(pathToFileURL(join(folder, basename(file).replace(/\.ts$/, '.mjs'))).href);
    }
    for (const test of collected) this.#tests.set(`${test.file}: ${test.name}`, test);
  }

  async dryRun() {
    const ns = stryker();
    const results = [];
    for (const [id, test] of this.#tests) {
      ns.currentTestId = id;
      results.push(await attempt(id, test));
      this.#times.set(id, results.at(-1).timeSpentMs);
    }
    ns.currentTestId = undefined;
    let together = 0;
    for (const result of results.toSorted((one, other) => one.timeSpentMs - other.timeSpentMs)) {
      together += result.timeSpentMs;
      const isKept = result.timeSpentMs <= SLOW_MS && together <= BUDGET_MS;
      if (isKept || result.status === TestStatus.Failed) continue;
      // Skipped, not unsaid: time that no test accounts for is added to what every endless mutant is given.
      result.status = TestStatus.Skipped;
      delete ns.mutantCoverage?.perTest[result.id];
    }
    return { status: DryRunStatus.Complete, tests: results, mutantCoverage: ns.mutantCoverage };
  }

  async mutantRun(options) {
    const isLate = this.#metAtLoad.has(options.activeMutant.id);
    const result = await this.#tryMutant(options, isLate ? PATIENCE_MS : Infinity);
    const failed = result.tests?.at(-1);
    if (failed?.status !== TestStatus.Failed)
      return toMutantRunResult(
        isLate || stryker().hitCount === 0 ? await this.#tryFromLoad(options) : result,
      );
    // A test that fails without a mutant too has met what an earlier one left behind, which says nothing of this one.
    const without = await attempt(failed.id, this.#tests.get(failed.id));
    if (without.status === TestStatus.Success) return toMutantRunResult(result);
    await this.#load();
    return toMutantRunResult(await this.#tryMutant(options));
  }

  /**
   * Tries a mutant that is there while tests and room are loaded, with every test. What is built when a file is loaded,
   * or once when it is first asked for, is built before a mutant comes.
   */
  async #tryFromLoad(options) {
    stryker().activeMutant = options.activeMutant.id;
    const notLoaded = await this.#load().catch(String);
    const result = notLoaded
      ? {
          status: DryRunStatus.Complete,
          tests: [{ id: 'load', status: TestStatus.Failed, failureMessage: notLoaded }],
        }
      : await this.#tryMutant({ ...options, testFilter: undefined });
    stryker().activeMutant = undefined;
    await this.#load();
    return result;
  }

  async #tryMutant({ activeMutant, testFilter, hitLimit }, patience = Infinity) {
    const ns = stryker();
    Object.assign(ns, { activeMutant: activeMutant.id, hitCount: 0, hitLimit });
    const begun = performance.now();
    const tests = [];
    // Most mutants are caught by many tests: the quickest come first.
    const ids = [...(testFilter ?? this.#tests.keys())];
    for (const id of ids.sort((one, other) => this.#times.get(one) - this.#times.get(other))) {
      const result = await attempt(id, this.#tests.get(id));
      tests.push(result);
      if (result.status === TestStatus.Failed || performance.now() - begun > patience) break;
    }
    Object.assign(ns, { activeMutant: undefined, hitLimit: undefined });
    return determineHitLimitReached(ns.hitCount, hitLimit) ?? { status: DryRunStatus.Complete, tests };
  }
}

async function attempt(id, test) {
  const begun = performance.now();
  const told = { id, name: test.name, fileName: join('tests', process.env.ROOM, test.file) };
  try {
    await test.run();
    return { ...told, status: TestStatus.Success, timeSpentMs: performance.now() - begun };
  } catch (error) {
    const failureMessage = String(error?.message ?? error).slice(0, 500);
    return { ...told, status: TestStatus.Failed, failureMessage, timeSpentMs: performance.now() - begun };
  }
}

/** Bundled tests meet the interface here instead of vitest, properties that run less often, and their own addresses. */
function standIn(bundle) {
  bundle.onResolve({ filter: /^vitest$/ }, () => ({ path: here('test-interface.mjs'), external: true }));
  bundle.onResolve({ filter: /^fast-check$/ }, () => ({ path: 'fast-check', namespace: 'fewer-runs' }));
  bundle.onLoad({ filter: /.*/, namespace: 'fewer-runs' }, () => ({
    resolveDir: process.cwd(),
    contents: `
      import real from '${import.meta.resolve('fast-check')}';
      const fewer = (options) => ({ ...options, numRuns: Math.min(options?.numRuns ?? ${RUNS}, ${RUNS}) });
      export default { ...real, assert: (property, options) => real.assert(property, fewer(options)) };`,
  }));
  bundle.onLoad({ filter: /[\\/]tests[\\/].*\.ts$/ }, ({ path }) => {
    const contents = readFileSync(path, 'utf8')
      .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href))
      .replaceAll('import.meta.dirname', JSON.stringify(join(path, '..')));
    return { contents, loader: 'ts' };
  });
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'room', RoomTests)];
