/** What is left of the steps a search may take. Steps, not time, so that every machine comes to the same answer. */
export interface Steps {
  left: number;
}
