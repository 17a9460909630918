import { withOwnLooks } from "../../src/sheet/withOwnLooks";

test("a look that both names the piece and lists it stands once, as the piece names it", () => {
  const named = [{ name: "look 3", key: "3" }];
  const own = [
    { name: "1", key: "1" },
    { name: "3", key: "3" },
  ];
  expect(withOwnLooks(named, own)).toEqual([
    { name: "look 3", key: "3" },
    { name: "1", key: "1" },
  ]);
});
