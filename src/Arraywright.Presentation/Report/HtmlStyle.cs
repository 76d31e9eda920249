using Arraywright.Limits;

namespace Arraywright.Presentation.Report;

/// <summary>How the page of a report looks: on a telephone, in the dark, on paper. The fonts are the reader's own.</summary>
internal static class HtmlStyle
{
    /// <summary>The class of a level, which its word repeats.</summary>
    public static string Class(Level level) => level switch
    {
        Level.Go => "go",
        Level.Ask => "ask",
        _ => "stop",
    };

    /// <summary>The style sheet. Colours keep 4.5 to 1 against their ground (WCAG 2.2, 1.4.3), light and dark.</summary>
    public const string Sheet = """

        :root { color-scheme: light dark; --ink: #1b1b1b; --ground: #ffffff; --pale: #f2f2ee; --line: #8a8a84; --link: #0b5394; --go: #0a5c2b; --ask: #7a4a00; --stop: #9b1414; }
        @media (prefers-color-scheme: dark) { :root { --ink: #ececea; --ground: #191a1b; --pale: #26282a; --line: #8d8f92; --link: #8cc2ff; --go: #7fd99b; --ask: #f0bd62; --stop: #ff9c94; } }
        * { box-sizing: border-box; }
        body { margin: 0 auto; max-width: 54rem; padding: 1rem; font: 1rem/1.5 system-ui, sans-serif; color: var(--ink); background: var(--ground); overflow-wrap: anywhere; }
        h1 { font-size: 1.7rem; line-height: 1.2; margin: 0.5rem 0 0; }
        h2 { font-size: 1.3rem; margin: 2.2rem 0 0.6rem; border-bottom: 2px solid var(--line); }
        h3 { font-size: 1.05rem; margin: 1.4rem 0 0.4rem; }
        a { color: var(--link); }
        nav ol { columns: 2 16rem; padding-left: 1.6rem; }
        nav li { padding: 0.15rem 0; }
        li { margin: 0.3rem 0; }
        .verdict { border: 2px solid; border-left-width: 0.6rem; padding: 0.7rem 1rem; font-size: 1.1rem; color: var(--ink); background: var(--pale); }
        .verdict strong { font-size: 1.3rem; }
        .verdict.go { border-color: var(--go); } .verdict.ask { border-color: var(--ask); } .verdict.stop { border-color: var(--stop); }
        .go strong, th.go { color: var(--go); } .ask strong, th.ask { color: var(--ask); } .stop strong, th.stop { color: var(--stop); }
        .table { overflow-x: auto; margin: 1rem 0; }
        table { border-collapse: collapse; width: 100%; font-size: 0.92rem; overflow-wrap: break-word; }
        caption { text-align: left; font-weight: 600; padding: 0.2rem 0; }
        th, td { text-align: left; vertical-align: top; padding: 0.3rem 0.5rem; border-top: 1px solid var(--line); }
        thead .figure { white-space: normal; }
        thead th { background: var(--pale); } tbody th { font-weight: 600; min-width: 8em; } tbody th.go, tbody th.ask, tbody th.stop, tbody th.figure { min-width: 0; white-space: nowrap; overflow-wrap: normal; }
        .figure { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
        tbody th { overflow-wrap: anywhere; }
        .note td { border-top: 0; padding-top: 0; font-size: 0.88rem; }
        .steps > li { margin: 1.1rem 0; padding-left: 0.3rem; }
        .steps p { margin: 0.3rem 0; }
        .if-not { border-left: 0.3rem solid var(--ask); padding-left: 0.7rem; }
        figure { margin: 1rem 0; } figure svg { max-width: 100%; height: auto; }
        .narrow { display: none; }
        @media screen and (max-width: 40rem) { .wide { display: none; } .narrow { display: block; } }
        @media screen and (max-width: 46rem) {
          .table { overflow-x: visible; }
          table, caption, tbody, tr, th, td { display: block; }
          tr { border-top: 1px solid var(--line); padding: 0.35rem 0; }
          tr.note { border-top: 0; padding-top: 0; }
          th, td, .figure { border-top: 0; padding: 0.1rem 0; text-align: left; white-space: normal; overflow-wrap: anywhere; }
          td[data-label] { display: flow-root; padding-left: 9.5rem; }
          thead, td:empty, td[data-label]:empty { display: none; }
          td[data-label]::before { content: attr(data-label); float: left; width: 9rem; margin-left: -9.5rem; font-size: 0.88rem; }
        }
        figcaption { font-size: 0.9rem; }
        footer { margin-top: 2rem; border-top: 1px solid var(--line); font-size: 0.85rem; }
        @page { size: A4; margin: 16mm; }
        @media print {
          :root { color-scheme: light; --ink: #000000; --ground: #ffffff; --pale: #f2f2ee; --line: #777777; --link: #000000; --go: #0a5c2b; --ask: #7a4a00; --stop: #9b1414; }
          body { max-width: none; padding: 0; font-size: 10pt; }
          h2, h3, caption { break-after: avoid; }
          .steps > li, tr, figure, .verdict { break-inside: avoid; }
          tr:has(+ tr.note) { break-after: avoid; }
          .table { overflow: visible; }
          tbody tr:first-child { break-before: avoid; }
          footer { display: none; }
        }

        """;
}
