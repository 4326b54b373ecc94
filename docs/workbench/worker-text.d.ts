/** The bundled text of a worker, put in by scripts/build-workbench.mjs. */
declare module 'worker:*' {
  const text: string;
  export default text;
}
