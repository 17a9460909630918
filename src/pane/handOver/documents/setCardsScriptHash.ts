/** SHA-256 of the script of the set cards in base64, as a page's policy names it (Content Security Policy Level 3, 2.3.1); a test compares the two. */
export const setCardsScriptHash = "sha256-Ne/c1dpRibhQF+3+r3v12SbC6bRqCxJUNkB16Dyu+bo=";
