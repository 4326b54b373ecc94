/** A count with its noun. */
export function counted(count: number, noun: string): string {
  return count === 1 ? `1 ${noun}` : `${count} ${noun}s`;
}

/** A count of which none is what was looked for. */
export function noneAmong(count: number, noun: string, sought: string): string {
  return `${counted(count, noun)}, but no ${sought}`;
}
