package collarwright.paper;

import collarwright.picture.Ink;

/** How the front page looks: on a desk, on a phone, on A4 paper. */
final class PageStyle {

    private static final String SHEET = """
            :root { color-scheme: light; }
            * { box-sizing: border-box; }
            body { margin: 0 auto; padding: 1rem; max-width: 64rem; background: PAPER; color: INK;
              font: 1.05rem/1.5 "Liberation Sans", Arial, Helvetica, sans-serif; overflow-wrap: break-word; }
            h1 { font-size: 1.9rem; line-height: 1.2; margin: 0.5rem 0; overflow-wrap: anywhere; }
            .whole { white-space: nowrap; }
            h2 { font-size: 1.4rem; line-height: 1.25; margin: 2.4rem 0 0.6rem; padding-top: 0.6rem;
              border-top: 2px solid INK; }
            h3 { font-size: 1.15rem; margin: 1.6rem 0 0.4rem; }
            p, ul, dl { margin: 0.5rem 0; }
            a { color: DATUM; }
            a:focus-visible { outline: 3px solid DATUM; outline-offset: 2px; }
            nav ul { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: 0.2rem 1.2rem; }
            nav a { display: inline-block; padding: 0.35rem 0; }
            dl div { display: grid; grid-template-columns: 9rem 1fr; gap: 0.6rem; }
            dt { color: GREY; }
            dd { margin: 0; }
            table { border-collapse: collapse; width: 100%; margin: 0.8rem 0; }
            caption { text-align: left; color: GREY; padding-bottom: 0.2rem; }
            th, td { text-align: left; vertical-align: top; padding: 0.35rem 0.5rem; border-bottom: 1px solid RULE; }
            th { font-weight: bold; }
            thead th { background: PALE; border-top: 1px solid INK; border-bottom: 1px solid INK;
              vertical-align: bottom; }
            .number { text-align: right; font-variant-numeric: tabular-nums; }
            .stop { border: 3px solid INK; padding: 0.6rem; }
            figure { margin: 0.8rem 0; }
            figure svg { display: block; max-width: 100%; height: auto; }
            figcaption { color: GREY; margin-top: 0.3rem; }
            .pair { display: flex; flex-wrap: wrap; gap: 0 1.5rem; }
            .pair figure { max-width: 88mm; }
            .shapes { position: absolute; }
            .narrow { display: none; }
            .files { list-style: none; padding: 0; }
            .files li { padding: 0.35rem 0; border-bottom: 1px solid RULE; }
            small { font-size: 1rem; color: GREY; }
            @media screen and (max-width: 46rem) {
              .wide { display: none; }
              .narrow { display: block; }
              dl div { grid-template-columns: 7.5rem 1fr; }
              table.stack thead { display: none; }
              table.stack, table.stack caption, table.stack tbody, table.stack tr, table.stack th, table.stack td {
                display: block; }
              table.stack tr { border-top: 1px solid INK; padding: 0.4rem 0; }
              table.stack tbody th { background: PALE; }
              table.stack tbody th, table.stack td { display: grid; grid-template-columns: 8.5rem 1fr; gap: 0.6rem;
                border: 0; padding: 0.15rem 0.3rem; text-align: left; }
              table.stack tbody th::before, table.stack td::before { content: attr(data-label); color: GREY;
                font-weight: normal; }
            }
            @media screen and (max-width: 24rem) { .whole { white-space: normal; } }
            @page { size: A4; margin: 15mm; }
            @media print {
              body { padding: 0; max-width: none; font-size: 11.5pt; line-height: 1.35; }
              nav { display: none; }
              h1 { font-size: 20pt; }
              h2 { font-size: 15pt; margin-top: 8mm; }
              h3 { font-size: 12.5pt; }
              h2, h3, caption { break-after: avoid; }
              figure, tr, li, .pair { break-inside: avoid; }
              small { font-size: 11.5pt; }
              a { color: INK; text-decoration: none; }
              .pair { gap: 0 4mm; }
              .pattern .wide { display: none; }
            }
            """;

    private PageStyle() {}

    static String css() {
        String css = SHEET;
        for (Ink ink : Ink.values()) {
            css = css.replaceAll("\\b" + ink.name() + "\\b", ink.hex());
        }
        return css;
    }
}
