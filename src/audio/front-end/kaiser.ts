/** Kaiser's window at `x` from -1 to 1 (0 outside), for filters designed by the window method (Kaiser and Schafer, 1980). */
export function kaiser(x: number, beta: number): number {
  if (x < -1 || x > 1) return 0;
  return besselI0(beta * Math.sqrt(1 - x * x)) / besselI0(beta);
}

/** sin(pi x) / (pi x). */
export function sinc(x: number): number {
  return Math.abs(x) < 1e-9 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
}

/** Modified Bessel function of order zero by its power series, good to double precision for the arguments of windows. */
function besselI0(x: number): number {
  let sum = 1;
  let term = 1;
  for (let k = 1; term > sum * 1e-17; k++) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
}
