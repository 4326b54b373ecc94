// Type-checks and runs every ```ts example of the Markdown files and doc comments against the built package,
// and compares what it prints with what it shows.
//
// An example shows its output as `console.log(x); // text`; further full-line comments right below
// continue the text. Everything shown, in order, must be everything printed.
import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { format } from 'node:util';
import ts from 'typescript';

const root = fileURLToPath(new URL('..', import.meta.url));
const out = join(root, 'out/examples');

function filesUnder(folder, ending) {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .sort();
}

/** Fences of a text; `prefix` is what stands before each of its lines (' * ' in a doc comment). */
function fences(path) {
  const found = [];
  let open = null;
  readFileSync(join(root, path), 'utf8')
    .split('\n')
    .forEach((line, index) => {
      const fence = /^(\s*\*? ?)```(.*)$/.exec(line);
      if (open === null && fence !== null && /^ts\b(?!.*\bnot run\b)/.test(fence[2])) {
        open = { path, line: index + 1, prefix: fence[1], lines: [] };
      } else if (open !== null && line.trim().replace(/^\* ?/, '') === '```') {
        found.push(open);
        open = null;
      } else if (open !== null) {
        open.lines.push(
          line.startsWith(open.prefix) ? line.slice(open.prefix.length) : line.replace(/^\s*\* ?/, ''),
        );
      }
    });
  return found;
}

/**
 * What an example shows: the comments behind and right below its console.log statements or the block they end,
 * and those that close the example.
 */
function shown(lines) {
  const text = [];
  const last = lines.findLastIndex((line) => !/^\s*(\/\/.*)?$/.test(line));
  let output = false;
  for (const [index, line] of lines.entries()) {
    const comment = /^\s*\/\/ ?(.*)$/.exec(line);
    const statement = /^(?:.*\bconsole\.log\(.*\)|\s*\))[;,](?:\s*\/\/ ?(.*))?$/.exec(line);
    if (comment !== null && (output || index > last)) text.push(comment[1]);
    else if (statement?.[1] !== undefined) text.push(statement[1]);
    output = statement !== null || (output && (comment !== null || /^\s*\}$/.test(line)));
  }
  return text.join('\n');
}

const sources = [
  ...readdirSync(root).filter((name) => name.endsWith('.md')),
  ...filesUnder('docs', '.md').filter((path) => !path.startsWith('docs/generated/')),
  ...filesUnder('src', '.ts'),
];
const examples = sources.flatMap(fences);

rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
writeFileSync(
  join(out, 'tsconfig.json'),
  JSON.stringify({
    compilerOptions: {
      target: 'ES2022',
      module: 'NodeNext',
      strict: true,
      exactOptionalPropertyTypes: true,
      noEmit: true,
      skipLibCheck: true,
      lib: ['ES2023', 'DOM'],
      types: ['node'],
    },
    include: ['*.mts'],
  }),
);
examples.forEach((example, index) => {
  example.file = join(out, `example-${String(index + 1).padStart(3, '0')}.mts`);
  writeFileSync(example.file, `${example.lines.join('\n')}\nexport {};\n`);
});

const problems = [];
try {
  execFileSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', out], {
    encoding: 'utf8',
  });
} catch (error) {
  for (const line of error.stdout.split('\n').filter((text) => text.includes('error TS'))) {
    const name = /example-(\d+)\.mts/.exec(line)?.[1];
    const example = examples[Number(name) - 1];
    problems.push(`${example?.path}:${example?.line} ${line}`);
  }
}

const log = console.log;
for (const example of examples) {
  const script = example.file.replace(/\.mts$/, '.mjs');
  const { outputText } = ts.transpileModule(readFileSync(example.file, 'utf8'), {
    compilerOptions: {
      module: ts.ModuleKind.ESNext,
      target: ts.ScriptTarget.ES2022,
      verbatimModuleSyntax: false,
    },
  });
  writeFileSync(script, outputText);
  const printed = [];
  console.log = (...values) => printed.push(format(...values));
  try {
    await import(pathToFileURL(script).href);
  } catch (error) {
    problems.push(`${example.path}:${example.line} threw ${error.stack}`);
    continue;
  } finally {
    console.log = log;
  }
  const wanted = shown(example.lines);
  if (printed.join('\n') !== wanted) {
    problems.push(`${example.path}:${example.line}\n  shows:  ${wanted}\n  prints: ${printed.join('\n')}`);
  }
}

for (const problem of problems) console.error(problem);
console.log(`${examples.length} examples run, ${problems.length} problems`);
process.exitCode = problems.length === 0 ? 0 : 1;
