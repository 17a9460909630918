import fc from "fast-check";
import kinds from "../../shared/garment-kinds.json";
import { readKind } from "../../src/sheet/readKind";

const NAMED: readonly (readonly [string, string])[] = [
  ["Coat", "coat"],
  ["puffer", "coat"],
  ["Puffer jacket", "coat"],
  ["trench coat (camel)", "coat"],
  ["wool overcoats", "coat"],
  ["leather jacket", "jacket"],
  ["blazer", "jacket"],
  ["silk gown", "dress"],
  ["shirt dress", "dress"],
  ["2 dresses", "dress"],
  ["dress shirt", "shirt"],
  ["T-shirt", "top"],
  ["tees", "top"],
  ["blouses", "shirt"],
  ["cashmere jumper", "knit"],
  ["jersey dress", "dress"],
  ["jeans", "trousers"],
  ["wide-leg pants", "trousers"],
  ["denim shorts", "trousers"],
  ["mini skirt", "skirt"],
  ["trouser suit", "suit"],
  ["suit jacket", "jacket"],
  ["dress shoes", "shoes"],
  ["heels", "shoes"],
  ["ankle boots", "boots"],
  ["shoe bag", "bag"],
  ["clutch", "bag"],
  ["bucket hat", "hat"],
  ["belt", "belt"],
  ["gold ring", "jewellery"],
  ["pair of earrings", "jewellery"],
  ["costume jewellery", "jewellery"],
  ["silk scarf", "scarf"],
  ["tie", "scarf"],
  ["wrap dress", "dress"],
  ["15 den tights", "hosiery"],
  ["bra", "underwear"],
  ["bikini", "swimwear"],
  ["swim shorts", "swimwear"],
  ["sunglasses", "glasses"],
  ["leather gloves", "gloves"],
  ["accessories", "other"],
  ["trousers with belt", "trousers"],
  ["manteau long", "coat"],
  ["doudoune", "coat"],
  ["robe chemise", "dress"],
  ["robes", "dress"],
  ["pantalon de costume", "trousers"],
  ["boucles d'oreilles", "jewellery"],
  ["sac à main", "bag"],
  ["chaussures", "shoes"],
  ["maillot de bain", "swimwear"],
  ["abrigo", "coat"],
  ["2 x jeans", "trousers"],
  ["blk ankle boots", "boots"],
  ["dress w/ belt", "dress"],
  ["cap toe oxfords", "shoes"],
  ["oxford shirt", "shirt"],
  ["pull-on trousers", "trousers"],
  ["slip-on sneakers", "shoes"],
  ["slip ons", "shoes"],
  ["boiler suit", "dress"],
  ["trucker hat", "hat"],
  ["wedge heels", "shoes"],
  ["Halstuch", "scarf"],
  ["tacones", "shoes"],
  ["tuta", "dress"],
  ["chaqueta de cuero", "jacket"],
  ["vestido largo", "dress"],
  ["zapatos", "shoes"],
  ["gafas de sol", "glasses"],
  ["traje de baño", "swimwear"],
  ["cappotto", "coat"],
  ["giacca", "jacket"],
  ["camicia bianca", "shirt"],
  ["scarpe da ginnastica", "shoes"],
  ["borsa", "bag"],
  ["Wintermantel", "coat"],
  ["Lederjacke", "jacket"],
  ["Abendkleid", "dress"],
  ["Jeanshose", "trousers"],
  ["Sportschuhe", "shoes"],
  ["Stiefel", "boots"],
  ["Handschuhe", "gloves"],
  ["Gürtel", "belt"],
];

describe("readKind", () => {
  it.each(NAMED)("reads %j as %s", (text, kind) => expect(readKind(text)).toBe(kind));

  it.each(["", "  ", "12", "camel", "Maison Orla", "dress and belt", "coat / boots", "???"])(
    "gives null for %j",
    (text) => expect(readKind(text)).toBeNull(),
  );

  it("knows each word and phrase of the vocabulary as the kind it is listed under, in any case", () => {
    const listed = new Map<string, string>();
    for (const words of [kinds.headFirst, kinds.headLast])
      for (const [kind, list] of Object.entries(words)) for (const word of list.split(", ")) listed.set(word, kind);
    for (const [word, kind] of listed) expect([word, readKind(word.toUpperCase())]).toEqual([word, kind]);
  });

  it("lists no word under two kinds", () => {
    const seen = new Map<string, string>();
    for (const words of [kinds.headFirst, kinds.headLast])
      for (const [kind, list] of Object.entries(words))
        for (const word of list.split(", ")) {
          expect([word, seen.get(word) ?? kind]).toEqual([word, kind]);
          seen.set(word, kind);
        }
  });

  it("never throws, whatever is typed", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        readKind(text);
      }),
    );
  });
});
