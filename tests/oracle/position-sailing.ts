/** The sailings as the handbook works them: American Practical Navigator, The Sailings, from memory. Miles and minutes. */

interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

const DEGREE = Math.PI / 180;
const WGS84 = { a: 6_378_137, f: 1 / 298.257223563 };
const E2 = WGS84.f * (2 - WGS84.f);

/** Meridional parts in minutes: 3437.7468 [ln tan(45° + L/2) - e artanh(e sin L)]. */
export function meridionalParts(latitude: number): number {
  const e = Math.sqrt(E2);
  const tangent = Math.tan((45 + latitude / 2) * DEGREE);
  return 3437.7468 * (Math.log(tangent) - e * Math.atanh(e * Math.sin(latitude * DEGREE)));
}

/** l = D cos C; then p = D sin C and DLo = p / cos Lm (mid-latitude, parallel) or DLo = m tan C (Mercator). */
export function sailed(method: string, from: Place, course: number, miles: number): Place {
  const l = miles * Math.cos(course * DEGREE);
  const latitude = from.latitude + l / 60;
  const middle = (from.latitude + latitude) / 2;
  const dlo =
    method === 'mercator'
      ? (meridionalParts(latitude) - meridionalParts(from.latitude)) * Math.tan(course * DEGREE)
      : (miles * Math.sin(course * DEGREE)) / Math.cos(middle * DEGREE);
  return { latitude, longitude: ((((from.longitude + dlo / 60 + 180) % 360) + 360) % 360) - 180 };
}

/** tan C = DLo / m or p / l; D = l / cos C, or p itself along a parallel. */
export function courseAndMiles(method: string, from: Place, to: Place): { course: number; miles: number } {
  const l = (to.latitude - from.latitude) * 60;
  const dlo = (((((to.longitude - from.longitude + 180) % 360) + 360) % 360) - 180) * 60;
  const p = dlo * Math.cos(((from.latitude + to.latitude) / 2) * DEGREE);
  const angle =
    method === 'mercator'
      ? Math.atan2(dlo, meridionalParts(to.latitude) - meridionalParts(from.latitude))
      : Math.atan2(p, l);
  const miles = l === 0 ? Math.abs(p) : l / Math.cos(angle);
  return { course: (angle / DEGREE + 360) % 360, miles };
}

/** The rhumb line on WGS 84 by small steps: dL/ds = cos C / M, dLo/ds = sin C / (N cos L), fourth-order Runge-Kutta. */
export function stepped(from: Place, course: number, metres: number, steps = 2000): Place {
  const rate = (latitude: number) => {
    const squeeze = 1 - E2 * Math.sin(latitude) ** 2;
    const meridian = (WGS84.a * (1 - E2)) / squeeze ** 1.5;
    const parallel = (WGS84.a * Math.cos(latitude)) / Math.sqrt(squeeze);
    return [Math.cos(course * DEGREE) / meridian, Math.sin(course * DEGREE) / parallel] as const;
  };
  const h = metres / steps;
  let [latitude, longitude] = [from.latitude * DEGREE, from.longitude * DEGREE];
  for (let i = 0; i < steps; i += 1) {
    const k1 = rate(latitude);
    const k2 = rate(latitude + (h / 2) * k1[0]);
    const k3 = rate(latitude + (h / 2) * k2[0]);
    const k4 = rate(latitude + h * k3[0]);
    latitude += (h / 6) * (k1[0] + 2 * k2[0] + 2 * k3[0] + k4[0]);
    longitude += (h / 6) * (k1[1] + 2 * k2[1] + 2 * k3[1] + k4[1]);
  }
  return { latitude: latitude / DEGREE, longitude: ((((longitude / DEGREE + 180) % 360) + 360) % 360) - 180 };
}
