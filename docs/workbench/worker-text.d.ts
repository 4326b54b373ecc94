/** The bundled text of a worker, put in by scripts/build-workbench.mjs. */
declare module 'worker:*' {
  const text: string;
  export default text;
}

/** A log of the examples, as text. */
declare module '*.log' {
  const text: string;
  export default text;
}
