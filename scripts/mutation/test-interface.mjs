// Stands in for `vitest` while mutants are tried: the same expectations, with tests collected in the process itself,
// so that a mutant costs its tests and not the start of a worker.
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  customMatchers,
  getState,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect';

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

/** Every test collected so far: `{ file, name, run }`. */
export const collected = [];
const place = { file: '', suites: [] };

/** The tests that are defined from now on belong to this file. */
export function beginFile(file) {
  place.file = file;
}

export function expect(value, message) {
  setState({ assertionCalls: getState(expect).assertionCalls + 1 }, expect);
  return chai.expect(value, message);
}
Object.assign(expect, chai.expect);
setState({ assertionCalls: 0 }, expect);
chai.expect.extend(expect, customMatchers);
Object.assign(expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
// A test without an expectation would still catch mutants by throwing; the suite itself refuses such a test.
expect.hasAssertions = () => {};

export function describe(name, define) {
  place.suites.push(name);
  define();
  place.suites.pop();
}

export function it(name, run) {
  const title = [...place.suites, name].join(' > ');
  const earlier = collected.filter((test) => test.file === place.file && test.title === title).length;
  collected.push({
    file: place.file,
    title,
    name: `${title}${earlier ? ` (${earlier + 1})` : ''}`,
    run,
  });
}

const each = (define) => (table) => (name, body) => {
  for (const row of table) {
    const values = Array.isArray(row) ? row : [row];
    define(name, () => body(...values));
  }
};
describe.each = each(describe);
it.each = each(it);
