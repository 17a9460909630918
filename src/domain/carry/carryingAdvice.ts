/** What holds wherever a weight is shown, by the limits that the lifting manual sets its own method. */
export const carryingAdvice =
  "Lifting and carrying injure. The NIOSH figure is for two hands and no more than a step or two of carrying, and soft bags have a poor grip. It is no medical advice: local rules come first, and a doctor’s or safety adviser’s word.";
