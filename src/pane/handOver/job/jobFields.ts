import type { JobFacts } from "./JobFacts";

/** The facts of the job in the order they are asked for, with the words that stand beside them in a workbook; the first is what the pane calls it. */
export const jobFields: readonly {
  readonly field: keyof JobFacts;
  readonly labels: readonly string[];
  readonly hint: string;
  readonly isLong: boolean;
}[] = [
  { field: "job", labels: ["Job", "Job name", "Production", "Project", "Shoot name"], hint: "", isLong: false },
  { field: "stylist", labels: ["Stylist", "Stylist name"], hint: "Who asks, and signs.", isLong: false },
  {
    field: "reached",
    labels: ["Reached at", "Stylist contact", "Stylist phone"],
    hint: "Telephone or mail.",
    isLong: false,
  },
  {
    field: "direction",
    labels: ["Direction", "Story", "Brief"],
    hint: "What the pictures are about, in a few sentences.",
    isLong: true,
  },
  {
    field: "credit",
    labels: ["Credit", "Credits"],
    hint: "Where the pictures appear, and how lenders are credited.",
    isLong: true,
  },
  {
    field: "responsible",
    labels: ["Responsible", "Letter of responsibility", "Responsible for the loan"],
    hint: "Who answers for the pieces, and under which cover. What you write here binds: keep to your policy and the lender’s own form.",
    isLong: true,
  },
];
