/** A count with its noun. */
export function counted(count: number, noun: string): string {
  return count === 1 ? `1 ${noun}` : `${count} ${noun}s`;
}

/** That none of so many is what was looked for. */
export function noneAmong(count: number, noun: string, sought: string): string {
  return count === 1 ? `1 ${noun}, not a ${sought}` : `${counted(count, noun)}, none of them a ${sought}`;
}
