import { existsSync, readFileSync, writeFileSync } from 'node:fs';

/** How much is measured: `quick` in a few minutes as a check, `full` for the figures of the docs. */
export type Size = 'quick' | 'full';

/** What one section found: figures for the docs, lines to print, and whatever falls short of a goal. */
export interface Findings {
  readonly figures: unknown;
  readonly lines: readonly string[];
  readonly shortcomings: readonly string[];
}

export type Section = (size: Size) => Findings;

const FILE = 'docs/figures/receiver.json';

/** The kept figures of one section. */
export function keptFigures(name: string): unknown {
  return allFigures()[name];
}

function allFigures(): Record<string, unknown> {
  return existsSync(FILE) ? JSON.parse(readFileSync(FILE, 'utf8')) : {};
}

/** Puts one section's figures into docs/figures/receiver.json, the others left as they are. */
export function keepFigures(name: string, figures: unknown): void {
  const all = allFigures();
  all.about =
    'Measured by `node scripts/bench.mjs receiver --full`, seeds fixed; every section by itself: `... --full success`';
  all[name] = figures;
  writeFileSync(FILE, `${JSON.stringify(all, null, 1)}\n`);
}

/** Eb/N0 at which a rising curve first reaches a share, between the points on a straight line; null when it never does. */
export function crossing(
  curve: readonly { readonly at: number; readonly share: number }[],
  share: number,
): number | null {
  for (let n = 1; n < curve.length; n++) {
    const [a, b] = [curve[n - 1], curve[n]] as [(typeof curve)[number], (typeof curve)[number]];
    if (a.share < share && b.share >= share)
      return a.at + ((share - a.share) / (b.share - a.share)) * (b.at - a.at);
  }
  return (curve[0]?.share ?? 0) >= share ? (curve[0]?.at ?? null) : null;
}

export function decibelText(value: number | null): string {
  return value === null ? 'not reached' : value.toFixed(1);
}

/** Rows of a table in columns of equal width. */
export function table(rows: readonly (readonly (string | number)[])[]): string[] {
  const widths = rows.reduce<number[]>(
    (most, row) => row.map((cell, n) => Math.max(most[n] ?? 0, String(cell).length)),
    [],
  );
  return rows.map((row) => row.map((cell, n) => String(cell).padStart(widths[n] as number)).join('  '));
}

/** Upper end of a 95 % interval for a share of which `count` of `trials` were seen (Clopper and Pearson, 1934). */
export function upperBound(count: number, trials: number): number {
  if (trials === 0) return 1;
  let low = count / trials;
  let high = 1;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    // Chance of so few or fewer at this share.
    let term = Math.exp(trials * Math.log1p(-middle));
    let sum = term;
    for (let k = 1; k <= count; k++) {
      term *= ((trials - k + 1) / k) * (middle / (1 - middle));
      sum += term;
    }
    if (sum > 0.05) low = middle;
    else high = middle;
  }
  return high;
}
