/** How the log looks, beyond what other dialogs look like: no first visit loads it. */

const rules = `
.log .read { position: relative; }
.log h3 { padding-block: 0.25rem 0.5rem; }
.log .asked { display: grid; grid-template-columns: repeat(auto-fit, minmax(14rem, 1fr)); gap: 0.5rem 1rem; padding-block-end: 0.75rem; }
.log .fits { list-style: none; }
.log .fits li { padding-block: 0.35rem; }
.log .stored > li { content-visibility: auto; contain-intrinsic-block-size: auto 10rem; }
.log .plots { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(18rem, 100%), 1fr)); gap: 1rem; padding-block: 0.5rem; }
.log figure { max-inline-size: 30rem; }
.log figcaption { color: var(--soft); line-height: 1.35; }
.log .odd { color: var(--care); }
.log .ticks label { display: flex; }
.leave-out { min-block-size: 3rem; margin-block: 0 0.75rem; padding-inline: 0.75rem; border: 1px solid var(--accent); border-radius: 3px; background: var(--leaf); color: var(--accent); font-size: 1rem; }
.leave-out[hidden] { display: none; }
@media print { .leave-out { display: none; } }
`

/** Adds the rules to the page's own. */
export function dress() {
  const sheet = new CSSStyleSheet()
  sheet.replaceSync(rules)
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet]
}
