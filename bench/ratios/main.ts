/**
 * What the built package costs, each figure as a ratio to something plain that runs beside it:
 * `node scripts/bench.mjs ratios [section ...]`. The sections measured are kept in docs/figures/bench.json, the others left as they are.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { burstFigures } from './burst.ts';
import { callFigures } from './call.ts';
import { channelFigures } from './channel.ts';
import { identityFigures } from './identity.ts';
import { importFigures } from './import-time.ts';
import { networkFigures } from './network.ts';
import { positionFigures } from './position.ts';
import { type Figure, median } from './ratio.ts';
import { receiverFigures } from './receiver.ts';
import { sentenceFigures } from './sentence.ts';

const SECTIONS: Readonly<Record<string, () => Figure[]>> = {
  identity: identityFigures,
  channel: channelFigures,
  position: positionFigures,
  call: callFigures,
  sentence: sentenceFigures,
  network: networkFigures,
  burst: burstFigures,
  receiver: receiverFigures,
  import: importFigures,
};

const FILE = 'docs/figures/bench.json';

/** The compiler decides anew in each process, and not always alike. */
const PROCESSES = 5;

const [only, ...more] = process.argv.slice(2);
if (only === '--once') {
  console.log(JSON.stringify(SECTIONS[more[0] as string]?.()));
  process.exit();
}
const wanted = only === undefined ? Object.keys(SECTIONS) : [only, ...more];
const sections = wanted.map((name): [string, Figure[]] => {
  // Import times are taken in processes of their own already.
  const runs = Array.from({ length: name === 'import' ? 1 : PROCESSES }, () => sectionInChild(name));
  const figures = (runs[0] as Figure[]).map((figure, place) =>
    rounded({ ...figure, ratio: median(runs.map((run) => (run[place] as Figure).ratio)) }),
  );
  return [name, figures];
});

const rows = sections
  .flatMap(([, figures]) => figures)
  .map((figure) => {
    const { what, beside, ratio, goal, extraMs, extraGoalMs } = figure;
    return [
      what,
      beside,
      `${ratio}×`,
      extraMs === undefined ? '' : `${extraMs} ms more`,
      goal !== undefined
        ? `at most ${goal}×`
        : extraGoalMs !== undefined
          ? `at most ${extraGoalMs} ms more`
          : '',
      isMissed(figure) ? 'MISSED' : '',
    ];
  });
const head = ['', 'beside', 'ratio', '', 'goal', ''];
const widths = head.map((_, column) =>
  Math.max(...[head, ...rows].map((row) => (row[column] as string).length)),
);
for (const row of [head, ...rows]) {
  console.log(
    row
      .map((cell, column) => cell.padEnd(widths[column] as number))
      .join('  ')
      .trimEnd(),
  );
}

const kept = existsSync(FILE) ? JSON.parse(readFileSync(FILE, 'utf8')) : {};
kept.about =
  'Measured on the built package by `npm run bench`; a ratio of 2 is twice the time of what stands beside it';
for (const [name, figures] of sections) kept[name] = { node: process.version, figures };
mkdirSync('docs/figures', { recursive: true });
writeFileSync(FILE, `${JSON.stringify(kept, null, 1)}\n`);

function sectionInChild(name: string): Figure[] {
  const child = spawnSync(process.execPath, [process.argv[1] as string, '--once', name], {
    encoding: 'utf8',
  });
  if (child.status !== 0) throw new Error(child.stderr);
  return JSON.parse(child.stdout);
}

function rounded(figure: Figure): Figure {
  const short = (value: number): number => Number(value.toPrecision(3));
  return {
    ...figure,
    ratio: short(figure.ratio),
    ...(figure.extraMs !== undefined && { extraMs: short(figure.extraMs) }),
  };
}

function isMissed({ ratio, goal = Infinity, extraMs = 0, extraGoalMs = Infinity }: Partial<Figure>): boolean {
  return (ratio ?? 0) > goal || extraMs > extraGoalMs;
}
