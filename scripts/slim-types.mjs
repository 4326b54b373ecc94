// Leaves of the English texts in the declarations only the slots, from which the params of a code follow: the sentences
// are in the JavaScript, and a fifth of the declarations is saved. Run by `npm run build`.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const dist = fileURLToPath(new URL('../dist', import.meta.url));

/** `'Channel {channel}[ ({note})]'` as `'{channel}[{note}]'`. */
const slotsIn = (text) => (text.match(/\{[^}]*\}|[[\]]/g) ?? []).join('');

for (const file of readdirSync(dist, { recursive: true }).filter((name) => name.endsWith('.d.ts'))) {
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
