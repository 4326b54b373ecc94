// Takes out of `dist` what is in it twice; run by `npm run build`. Of the English texts the declarations keep only the
// slots, from which the params of a code follow: the sentences are in the JavaScript. The JavaScript keeps no comments
// but the marks for bundlers, those of the source being in the declarations, and no import for its effects: no file has any.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const dist = fileURLToPath(new URL('../dist', import.meta.url));

/** `'Channel {channel}[ ({note})]'` as `'{channel}[{note}]'`. */
const slotsIn = (text) => (text.match(/\{[^}]*\}|[[\]]/g) ?? []).join('');

const files = readdirSync(dist, { recursive: true });

for (const file of files.filter((name) => name.endsWith('.js'))) {
  const text = readFileSync(join(dist, file), 'utf8');
  // Whole lines: none of a template begins like this.
  const bare = text.replace(/^ *(\/\/.*|\/\*\*[\s\S]*?\*\/)\n/gm, '');
  writeFileSync(join(dist, file), bare.replace(/^import '[^']*';\n/gm, ''));
}

for (const file of files.filter((name) => name.endsWith('.d.ts'))) {
  const text = readFileSync(join(dist, file), 'utf8');
  const literals = [];
  const collect = (node) => {
    if (ts.isStringLiteral(node) && ts.isLiteralTypeNode(node.parent)) literals.push(node);
    else ts.forEachChild(node, collect);
  };
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  for (const statement of source.statements.filter(ts.isVariableStatement))
    for (const { name, type } of statement.declarationList.declarations)
      if (type && /Texts(\$\d+)?$/.test(name.text)) collect(type);
  let slim = '';
  let at = 0;
  for (const literal of literals) {
    slim += text.slice(at, literal.getStart()) + JSON.stringify(slotsIn(literal.text));
    at = literal.end;
  }
  if (at > 0) writeFileSync(join(dist, file), slim + text.slice(at));
}
