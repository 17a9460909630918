/**
 * Turns the cards by keyboard: arrows, space, Page Up and Down, Home and End. A swipe needs no script, as the cards scroll by themselves.
 * It holds nothing of the workbook, so that the page's policy can name it by its hash.
 */
export const setCardsScript = `
const cards = [...document.querySelectorAll("article")];
const main = document.querySelector("main");
const shown = () => Math.round(main.scrollLeft / Math.max(1, main.clientWidth));
const show = (to) => {
  const card = cards[Math.min(Math.max(to, 0), cards.length - 1)];
  if (!card) return;
  main.scrollTo({ left: card.offsetLeft - main.offsetLeft });
  card.focus({ preventScroll: true });
};
addEventListener("keydown", (event) => {
  if (event.altKey || event.ctrlKey || event.metaKey) return;
  const steps = { ArrowRight: 1, PageDown: 1, " ": event.shiftKey ? -1 : 1, ArrowLeft: -1, PageUp: -1 };
  const to = event.key === "Home" ? 0 : event.key === "End" ? cards.length - 1 : event.key in steps ? shown() + steps[event.key] : null;
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
let at = 0;
main.addEventListener("scroll", () => { if (!resizing) at = shown(); });
let resizing = false;
addEventListener("resize", () => {
  resizing = true;
  main.scrollTo({ left: at * main.clientWidth, behavior: "instant" });
  setTimeout(() => { resizing = false; }, 100);
});
`;
