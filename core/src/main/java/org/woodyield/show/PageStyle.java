package org.woodyield.show;

/**
 * How a page looks: paper and ink, light or dark as the reader has it, one column that a telephone can show, and a print
 * form. No colour carries a meaning. It holds no character that XML or HTML would read as markup.
 */
final class PageStyle {

    static final String CSS = """
            :root {
              color-scheme: light dark;
              --paper: #fbfaf5;
              --ink: #1f1c17;
              --soft: #59534a;
              --rule: #bdb6a6;
              --shade: rgba(110, 90, 20, 0.08);
              --edge: rgba(50, 40, 10, 0.45);
            }
            @media (prefers-color-scheme: dark) {
              :root {
                --paper: #1a1814;
                --ink: #ece6d8;
                --soft: #b9b1a1;
                --rule: #575145;
                --shade: rgba(255, 240, 200, 0.05);
                --edge: rgba(255, 240, 200, 0.45);
              }
            }
            * { box-sizing: border-box; }
            html { -webkit-text-size-adjust: 100%; }
            body {
              margin: 0 auto;
              max-width: 66rem;
              padding: 1.5rem clamp(0.9rem, 4vw, 3rem) 4rem;
              background: var(--paper);
              color: var(--ink);
              font: 1rem/1.5 "Iowan Old Style", "Palatino Linotype", Palatino, "Book Antiqua", Georgia, serif;
              overflow-wrap: break-word;
            }
            header { border-bottom: 3px double var(--rule); padding-bottom: 1rem; }
            h1 { font-size: 2rem; line-height: 1.2; margin: 0.5rem 0 0.75rem; font-weight: normal; }
            h2 {
              font-size: 1.35rem;
              line-height: 1.25;
              margin: 3rem 0 0.75rem;
              padding-top: 0.6rem;
              border-top: 1px solid var(--rule);
              font-weight: normal;
            }
            h3 { font-size: 1.05rem; margin: 1.5rem 0 0.5rem; }
            p, ul { max-width: 46rem; margin: 0.6rem 0; }
            ul { padding-left: 1.2rem; }
            li { margin: 0.2rem 0; }
            a { color: inherit; text-decoration-thickness: 1px; text-underline-offset: 0.15em; }
            a:focus-visible, summary:focus-visible, .scroll:focus-visible { outline: 2px solid currentColor; outline-offset: 2px; }
            nav ol { columns: 13rem; column-gap: 2.6rem; padding-left: 1.6rem; margin: 0.8rem 0 0; font-size: 0.95rem; }
            nav li { break-inside: avoid; }
            .warning { border: 2px solid currentColor; border-left-width: 0.7rem; padding: 0.5rem 0.8rem; font-weight: bold; }
            .facts {
              display: grid;
              grid-template-columns: repeat(auto-fill, minmax(min(100%, 15rem), 1fr));
              gap: 1.1rem 2rem;
              margin: 1rem 0;
            }
            .facts dt { color: var(--soft); font-size: 0.9rem; }
            .facts dd { margin: 0; font-size: 0.9rem; line-height: 1.35; }
            .facts .figure { font-size: 1.35rem; line-height: 1.3; }
            .scroll { overflow-x: auto; max-width: 100%; }
            /* A shade at an edge behind which a wide table goes on; paper that scrolls with the table covers it at the end. */
            .scroll, .equation {
              background:
                linear-gradient(to right, var(--paper) 1.3rem, transparent) left / 3rem 100% no-repeat local,
                linear-gradient(to left, var(--paper) 1.3rem, transparent) right / 3rem 100% no-repeat local,
                linear-gradient(to right, var(--edge), transparent) left / 1.1rem 100% no-repeat scroll,
                linear-gradient(to left, var(--edge), transparent) right / 1.1rem 100% no-repeat scroll;
            }
            table {
              border-collapse: collapse;
              margin: 0.6rem 0 1.1rem;
              font: 0.85rem/1.35 "Helvetica Neue", Helvetica, Arial, sans-serif;
              font-variant-numeric: tabular-nums;
            }
            caption { text-align: left; padding: 0.3rem 0; font-weight: bold; }
            caption span { display: inline-block; position: sticky; left: 0; max-width: min(100%, calc(100vw - 2.5rem)); }
            th, td { padding: 0.28rem 0.9rem 0.28rem 0; text-align: left; vertical-align: top; min-width: 3.2rem; }
            th { font-weight: normal; }
            thead th { border-bottom: 1.5px solid currentColor; vertical-align: bottom; color: var(--soft); }
            tbody tr { border-bottom: 1px solid var(--rule); }
            tbody tr:nth-child(even) { background: var(--shade); }
            th.number, td.number { text-align: right; }
            td.number, tbody th { white-space: nowrap; }
            tbody th { max-width: 18rem; overflow-wrap: anywhere; }
            tbody th.long { white-space: normal; min-width: 12rem; }
            figure { margin: 1.2rem 0; }
            figcaption { color: var(--soft); font-size: 0.92rem; max-width: 46rem; }
            svg { display: block; min-width: 32rem; max-width: 100%; height: auto; }
            details { margin: 0.8rem 0; border-left: 3px solid var(--rule); padding-left: 0.9rem; }
            summary { cursor: pointer; padding: 0.2rem 0; }
            .steps { padding-left: 1.6rem; }
            .steps p { margin: 0.25rem 0; }
            .equation { overflow-x: auto; padding: 0.1rem 0; }
            .steps math { width: fit-content; margin: 0.45rem 0; }
            .value { font-variant-numeric: tabular-nums; }
            .source, .note { color: var(--soft); font-size: 0.9rem; }
            .memory { color: var(--ink); }
            @media (max-width: 40rem) {
              td:not(.number), tbody th:not(.number) { min-width: 7.5rem; }
              td.long { min-width: 18rem; }
              h1 { font-size: 1.6rem; }
              tbody th { white-space: normal; }
            }
            @page { margin: 14mm 13mm; }
            @media print {
              :root { --paper: #fff; --ink: #000; --soft: #333; --rule: #999; --shade: #fff; color-scheme: light; }
              body { max-width: none; padding: 0; font-size: 10pt; }
              h2, h3, summary, caption { break-after: avoid; }
              h2 { margin-top: 1.2rem; }
              figure, tr, .facts div, .steps li { break-inside: avoid; }
              thead { display: table-header-group; }
              .scroll, .equation { overflow: visible; background: none; }
              table { font-size: 7.6pt; }
              th, td { padding: 0.15rem 0.45rem 0.15rem 0; min-width: 0; }
              tbody th { white-space: normal; overflow-wrap: break-word; }
              svg { min-width: 0; max-height: 150mm; }
              .working { font-size: 8pt; }
              .working .source, .working .note { font-size: 7pt; }
              .working h3 { font-size: 8.5pt; margin: 0.6rem 0 0.2rem; }
              .working p { margin: 0.1rem 0; }
              .working table { font-size: 6.5pt; margin: 0.2rem 0; }
              details::details-content { content-visibility: visible; display: block; height: auto; columns: 2; column-gap: 1.5rem; }
            }
            """;

    private PageStyle() {}
}
