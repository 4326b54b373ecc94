// Counts words that mark translated prose in shipped text, and checks the form of the latest commit subjects.
// The words have proper uses (a hull behind a mark, a value remembered): hence ceilings, and not a ban.
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const MARKERS =
  /\b(wanted|anew|by itself|stands|tells|whoever|laid down|bears|put away|behind|from memory)\b/gi;
const SHIPPED = ['src', 'docs', 'README.md', 'CHANGELOG.md'];
const CEILINGS = { markers: 40, 'from memory in src': 60 };
const SUBJECT = /^[a-z][a-z0-9-]*(, [a-z][a-z0-9-]*)*: [a-z]/;
const LONGEST_SUBJECT = 72;
const COMMITS = 20;

/** The marker words of a text, in lower case, also where a comment's line breaks between two words. */
export function markersIn(text) {
  return [...text.replace(/\n[ \t]*(?:\*|\/\/)?[ \t]*/g, ' ').matchAll(MARKERS)].map(([word]) =>
    word.toLowerCase(),
  );
}

/** What is wrong with a commit subject, or `null`. */
export function subjectFault(subject) {
  if (subject.length > LONGEST_SUBJECT) return `${subject.length} characters, at most ${LONGEST_SUBJECT}`;
  return SUBJECT.test(subject) ? null : 'expected "room: verb object"';
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  process.chdir(fileURLToPath(new URL('..', import.meta.url)));
  const byFolder = new Map();
  const totals = { markers: 0, 'from memory in src': 0 };
  for (const file of files()) {
    const found = markersIn(readFileSync(file, 'utf8'));
    const folder = file.split('/').slice(0, -1).slice(0, 2).join('/') || file;
    for (const word of found) {
      if (word !== 'from memory') totals.markers++;
      else if (file.startsWith('src/')) totals['from memory in src']++;
      const counts = byFolder.get(folder) ?? {};
      counts[word] = (counts[word] ?? 0) + 1;
      byFolder.set(folder, counts);
    }
    if (process.argv.includes('--list') && found.length > 0) console.log(`${file}: ${found.join(', ')}`);
  }
  for (const [folder, counts] of [...byFolder].sort())
    console.log(
      `${folder}: ${Object.entries(counts)
        .map(([word, n]) => `${word} ${n}`)
        .join(', ')}`,
    );
  for (const [what, total] of Object.entries(totals)) {
    console.log(`${what}: ${total}, at most ${CEILINGS[what]}`);
    if (total > CEILINGS[what]) process.exitCode = 1;
  }
  for (const subject of subjects()) {
    const fault = subjectFault(subject);
    if (fault === null) continue;
    console.log(`commit "${subject}": ${fault}`);
    process.exitCode = 1;
  }
}

function files() {
  return SHIPPED.flatMap((name) =>
    /\./.test(name) ? [name] : readdirSync(name, { recursive: true }).map((file) => `${name}/${file}`),
  ).filter((file) => /\.(ts|mjs|md|html|css)$/.test(file));
}

/** Subjects of the latest commits; none where the history is not there, as in an unpacked archive. */
function subjects() {
  const run = spawnSync('git', ['log', `-${COMMITS}`, '--no-merges', '--format=%s'], { encoding: 'utf8' });
  return run.status === 0 ? run.stdout.split('\n').filter(Boolean) : [];
}
