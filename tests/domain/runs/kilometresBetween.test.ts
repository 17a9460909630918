import fc from "fast-check";
import { kilometresBetween } from "../../../src/domain/runs/kilometresBetween";

const place = fc.record({
  latitude: fc.double({ min: -90, max: 90, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
});

test("Nashville to Los Angeles, worked on a sphere of 6371 km: 2886.444442837983 km (Rosetta Code, haversine formula; read)", () => {
  const km = kilometresBetween({ latitude: 36.12, longitude: -86.67 }, { latitude: 33.94, longitude: -118.4 });
  expect(km).toBeCloseTo((2886.444442837983 * 6371.0088) / 6371, 6);
});

test("a degree along a meridian is a 360th of the way round", () => {
  const km = kilometresBetween({ latitude: 51, longitude: 0 }, { latitude: 52, longitude: 0 });
  expect(km).toBeCloseTo((2 * Math.PI * 6371.0088) / 360, 9);
});

test("agrees with the angle between two vectors, by their cross and dot products", () => {
  const vector = ({ latitude, longitude }: { latitude: number; longitude: number }): [number, number, number] => {
    const [north, east] = [(latitude * Math.PI) / 180, (longitude * Math.PI) / 180];
    return [Math.cos(north) * Math.cos(east), Math.cos(north) * Math.sin(east), Math.sin(north)];
  };
  fc.assert(
    fc.property(place, place, (from, to) => {
      const [a, b] = [vector(from), vector(to)];
      const cross = Math.hypot(a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]);
      const angle = Math.atan2(cross, a[0] * b[0] + a[1] * b[1] + a[2] * b[2]);
      // Near the opposite side of the earth the haversine loses some digits: to a metre and a half there.
      expect(Math.abs(kilometresBetween(from, to) - 6371.0088 * angle)).toBeLessThan(1.5e-3);
      expect(kilometresBetween(from, to)).toBe(kilometresBetween(to, from));
    }),
  );
});
