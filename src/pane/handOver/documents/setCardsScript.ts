/**
 * Turns the cards by keyboard: arrows, space, Page Up and Down, Home and End. A swipe needs no script, as the cards scroll by themselves.
 * It holds nothing of the workbook, so that the page's policy can name it by its hash.
 */
export const setCardsScript = `
const cards = [...document.querySelectorAll("article")];
const main = document.querySelector("main");
let at = 0;
let settling = 0;
const show = (to) => {
  at = Math.min(Math.max(to, 0), cards.length - 1);
  main.scrollTo({ left: at * main.clientWidth });
  cards[at].focus({ preventScroll: true });
};
addEventListener("keydown", (event) => {
  if (event.altKey || event.ctrlKey || event.metaKey) return;
  const steps = { ArrowRight: 1, PageDown: 1, " ": event.shiftKey ? -1 : 1, ArrowLeft: -1, PageUp: -1 };
  const to = event.key === "Home" ? 0 : event.key === "End" ? cards.length - 1 : event.key in steps ? at + steps[event.key] : null;
  if (to === null) return;
  event.preventDefault();
  show(to);
});
document.addEventListener("click", (event) => {
  const link = event.target.closest("a[data-to]");
  if (!link) return;
  event.preventDefault();
  show(Number(link.dataset.to));
});
main.addEventListener("scroll", () => {
  clearTimeout(settling);
  settling = setTimeout(() => { at = Math.round(main.scrollLeft / Math.max(1, main.clientWidth)); }, 150);
});
addEventListener("resize", () => {
  clearTimeout(settling);
  main.scrollTo({ left: at * main.clientWidth, behavior: "instant" });
});
`;
