import { withoutPieces } from "../../../src/domain/day/withoutPieces";
import { sampleLook } from "./sampleLook";

test("a look without its pieces shares nothing, and one that lists none stays itself", () => {
  const look = sampleLook(1, { pieces: ["P1"] });
  expect(withoutPieces(look)).toEqual({ ...look, pieces: [] });
  const bare = sampleLook(2);
  expect(withoutPieces(bare)).toBe(bare);
});
