/** Textbook spherical trigonometry, 60 miles to a degree of arc: American Practical Navigator, The Sailings. */

interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const degrees = (angle: number) => (angle * 180) / Math.PI;
const turned = (angle: number) => ((angle % 360) + 360) % 360;

/** cos D = sin L1 sin L2 + cos L1 cos L2 cos DLo; tan C = sin DLo cos L2 / (cos L1 sin L2 - sin L1 cos L2 cos DLo). */
export function greatCircle(from: Place, to: Place): { miles: number; course: number } {
  const [l1, l2, dlo] = [
    radians(from.latitude),
    radians(to.latitude),
    radians(to.longitude - from.longitude),
  ];
  const cosine = Math.sin(l1) * Math.sin(l2) + Math.cos(l1) * Math.cos(l2) * Math.cos(dlo);
  const course = Math.atan2(
    Math.sin(dlo) * Math.cos(l2),
    Math.cos(l1) * Math.sin(l2) - Math.sin(l1) * Math.cos(l2) * Math.cos(dlo),
  );
  return { miles: 60 * degrees(Math.acos(cosine)), course: turned(degrees(course)) };
}

/** cos Lv = cos L1 sin C; tan DLov = 1 / (sin L1 tan C). The vertex ahead on the shorter way. */
export function vertex(from: Place, to: Place): Place {
  const course = radians(greatCircle(from, to).course);
  const l1 = radians(from.latitude);
  const latitude = degrees(Math.acos(Math.abs(Math.cos(l1) * Math.sin(course)))) * Math.sign(from.latitude);
  const dlo = degrees(Math.atan(1 / (Math.sin(l1) * Math.tan(course))));
  const longitude = from.longitude + dlo;
  return { latitude, longitude: turned(longitude + 180) - 180 };
}

/** Radius of the sphere on which a minute of arc is 1852 m. */
export const MILE_SPHERE = (1852 * 60 * 180) / Math.PI;
