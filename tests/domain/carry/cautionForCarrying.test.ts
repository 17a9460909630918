import { cautionForCarrying } from "../../../src/domain/carry/cautionForCarrying";
import { sayCarryingCaution } from "../../../src/domain/carry/sayCarryingCaution";

describe("cautionForCarrying", () => {
  it("is none up to 20.7 kg, the load constant of 23 kg times 0.9 for a poor grip", () => {
    for (const grams of [0, 5000, 20_000, 20_700]) expect(cautionForCarrying(grams)).toBeNull();
  });

  it("gives the index above that, and tells what is above 50 lb", () => {
    expect(cautionForCarrying(20_701)).toMatchObject({ isOverPractice: false });
    expect(cautionForCarrying(22_679)).toMatchObject({ isOverPractice: false });
    expect(cautionForCarrying(22_680)).toMatchObject({ isOverPractice: true });
    expect(cautionForCarrying(41_400)!.liftIndex).toBeCloseTo(2, 12);
  });

  it("is said in one sentence, in both systems of weight", () => {
    expect(sayCarryingCaution(cautionForCarrying(21_735)!)).toBe(
      "21.7 kg (48 lb) is 1.05 times what the NIOSH lifting equation allows for soft bags in the easiest lift; take some out.",
    );
    expect(sayCarryingCaution(cautionForCarrying(30_000)!)).toBe(
      "30.0 kg (66 lb) is past what stylists are known to carry, which is no safe load either; share it out or go twice.",
    );
  });

  it("never says that a weight is more than a figure it rounds to", () => {
    // 22.8 kg is 50.27 lb.
    expect(sayCarryingCaution(cautionForCarrying(22_800)!)).toMatch(
      /^22\.8 kg \(50 lb\) is past what stylists are known to carry,/,
    );
  });
});
