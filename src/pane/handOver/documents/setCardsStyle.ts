/** The look of set cards: one card fills the screen, large enough to be read at arm's length; on paper two stand on a page. */
export const setCardsStyle = `
@page { margin: 12mm; }
* { box-sizing: border-box; }
:root { color-scheme: light dark; --paper: #fff; --ink: #111; --soft: #555; --line: #767676; --next: #0d6364; }
@media (prefers-color-scheme: dark) { :root { --paper: #101414; --ink: #f4f4f4; --soft: #bbb; --line: #8a8a8a; --next: #8ec7c7; } }
html, body { margin: 0; height: 100%; background: var(--paper); color: var(--ink); font: 20px/1.35 system-ui, "Segoe UI", Roboto, Helvetica, Arial, sans-serif; }
main { display: flex; height: 100vh; height: 100dvh; overflow-x: auto; overflow-y: hidden; scroll-snap-type: x mandatory; }
article { flex: 0 0 100%; height: 100%; scroll-snap-align: start; scroll-snap-stop: always; overflow-y: auto; padding: 16px; outline-offset: -3px; }
h1 { font-size: 44px; line-height: 1.1; margin: 0; overflow-wrap: anywhere; }
p, ul { margin: 8px 0; overflow-wrap: anywhere; }
.who { font-size: 30px; line-height: 1.2; }
.when { font-size: 26px; font-weight: 700; font-variant-numeric: tabular-nums; }
.soft { color: var(--soft); }
.next { border-top: 2px solid var(--line); padding-top: 8px; font-size: 24px; color: var(--next); font-weight: 600; }
img { display: block; max-width: 100%; max-height: 62vh; margin: 10px auto; object-fit: contain; }
.small { display: grid; grid-template-columns: repeat(auto-fill, minmax(130px, 1fr)); gap: 10px; }
figure { margin: 0; font-size: 16px; overflow-wrap: anywhere; break-inside: avoid; }
figure img { max-height: 30vh; margin: 0 0 4px; }
a { color: inherit; display: inline-block; min-height: 32px; min-width: 32px; }
@media (prefers-reduced-motion: no-preference) { main { scroll-behavior: smooth; } }
@media print {
  :root { --paper: #fff; --ink: #000; --soft: #444; --next: #000; }
  html, body, main, article { height: auto; }
  body { font-size: 12pt; }
  main { display: block; overflow: visible; }
  article { break-inside: avoid; padding: 0 0 8mm; margin-bottom: 8mm; border-bottom: 1px solid #000; overflow: visible; }
  h1 { font-size: 24pt; } .who { font-size: 16pt; } .when, .next { font-size: 13pt; }
  img { max-height: 85mm; margin-left: 0; }
  .small { grid-template-columns: repeat(5, 1fr); }
  figure { font-size: 8pt; }
  figure img { max-height: 30mm; }
}
`;
