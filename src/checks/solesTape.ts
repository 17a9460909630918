/** What a note says of tape on soles, in the words of the trade. */
export const solesTape = {
  taped: /\b(?:tape|taped|taping|masking|painter'?s)\b/i,
  cloth: /\b(?:gaff|gaffer|gaffa|cloth|duct)/i,
  takenOff: /\b(?:untaped|tape (?:is |was )?(?:off|removed|taken off)|tape comes off)\b/i,
};
