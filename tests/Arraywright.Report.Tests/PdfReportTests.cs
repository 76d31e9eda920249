using System.Text;
using System.Text.RegularExpressions;
using Arraywright.Presentation.Report;
using Arraywright.Print;

namespace Arraywright.Report.Tests;

public sealed partial class PdfReportTests
{
    [Theory]
    [MemberData(nameof(Scene.Names), MemberType = typeof(Scene))]
    public void Another_program_reads_all_of_its_text_back(string name)
    {
        Poppler.SkipUnlessInstalled();
        ReportDocument report = Scene.Report(name);
        PdfFile file = PdfReport.Of(report);
        Assert.InRange(file.Bytes.Length, 20_000, 600_000);
        string[] pages = Poppler.Pages(file.Bytes);
        Assert.Equal(file.PageCount, pages.Length);
        string said = string.Concat(pages.Select((page, index) => WithoutHeadAndFoot(Squeezed(page), index + 1, pages.Length)));
        Assert.All(Scene.Texts(report), text => Assert.Contains(Squeezed(Shown(text)), said, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Scene.Names), MemberType = typeof(Scene))]
    public void No_word_leaves_the_page_or_lies_on_another(string name)
    {
        Poppler.SkipUnlessInstalled();
        foreach (List<Word> page in Poppler.Words(PdfReport.Of(Scene.Report(name)).Bytes))
        {
            Assert.All(page, word => Assert.True(word is { LeftPt: > 40, RightPt: < 555, TopPt: > 20, BottomPt: < 820 }, $"{word}"));
            for (int one = 0; one < page.Count; one++)
            {
                for (int other = one + 1; other < page.Count; other++)
                {
                    Assert.True(Shared(page[one], page[other]) < 0.12, $"{page[one]} and {page[other]}");
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Scene.Names), MemberType = typeof(Scene))]
    public void No_text_is_smaller_than_six_points(string name)
    {
        Poppler.SkipUnlessInstalled();

        // The numbers of joints are the smallest text of a drawing. The frame of a short word is at its longest as long as its font is high, also where
        // it is turned: 1.21 of its size (ascent and descent of the font, 0.969 and 0.242).
        Word[] words = [.. Poppler.Words(PdfReport.Of(Scene.Report(name)).Bytes).SelectMany(page => page).Where(word => word.Text.Length <= 2)];
        Assert.NotEmpty(words);
        Assert.All(words, word => Assert.True(Math.Max(word.BottomPt - word.TopPt, word.RightPt - word.LeftPt) > 1.2 * 6, $"{word}"));
    }

    [Theory]
    [MemberData(nameof(Scene.Names), MemberType = typeof(Scene))]
    public void It_is_tagged_titled_and_bookmarked(string name)
    {
        Poppler.SkipUnlessInstalled();
        ReportDocument report = Scene.Report(name);
        PdfFile file = PdfReport.Of(report);
        string info = Poppler.Info(file.Bytes);
        Assert.Contains($"Title:           {report.Title}\n", info, StringComparison.Ordinal);
        Assert.Contains("Tagged:          yes\n", info, StringComparison.Ordinal);
        Assert.Contains("(A4)", info, StringComparison.Ordinal);
        string[] tags = [.. Poppler.Info(file.Bytes, "-struct").Split('\n').Select(line => line.Trim().Split(' ')[0].TrimEnd(':'))];
        Assert.Single(tags, "H1");
        Assert.Equal(report.Sections.Length, tags.Count(tag => tag == "H2"));
        Assert.Equal(report.Sections.Sum(section => Tables(section).Count()), tags.Count(tag => tag == "Table"));
        int furtherParts = Poppler.Pages(file.Bytes).Sum(page => FurtherPart().Count(page));
        Assert.Equal(report.Sections.Sum(section => section.Blocks.OfType<ReportBlock.Picture>().Count()) + furtherParts, tags.Count(tag => tag == "Figure"));
        Assert.Equal(report.Sections.Length, tags.Count(tag => tag == "Link"));

        // Bookmarks are in the file as UTF-16: one for each section, beside the title.
        string raw = Encoding.Latin1.GetString(file.Bytes);
        Assert.Equal(report.Sections.Select(section => section.Title), Bookmark().Matches(raw).Select(match => Encoding.BigEndianUnicode.GetString(Convert.FromHexString(Squeezed(match.Groups["title"].Value)))));
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes_and_another_plan_another_identifier()
    {
        byte[] one = PdfReport.Of(Scene.Report("four panels")).Bytes;
        Assert.Equal(one, PdfReport.Of(Scene.Report("four panels")).Bytes);
        byte[] other = PdfReport.Of(Scene.Report("two inputs")).Bytes;
        Assert.NotEqual(Identifier().Match(Encoding.Latin1.GetString(one)).Value, Identifier().Match(Encoding.Latin1.GetString(other)).Value);
        Assert.Contains("D:20000101000000+00'00'", Encoding.Latin1.GetString(one), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stated_date_is_the_files_own()
    {
        ReportDocument report = Scene.Report("four panels") with { Date = new DateOnly(2026, 6, 21) };
        Assert.Contains("D:20260621000000+00'00'", Encoding.Latin1.GetString(PdfReport.Of(report).Bytes), StringComparison.Ordinal);
    }

    [Fact]
    public void Signs_that_the_font_lacks_are_told_of()
    {
        Assert.True(PdfReport.Of(Scene.Report("four panels")).IsEverySignKnown);
        Assert.False(PdfReport.Of(Scene.Report("sixteen panels, hard names")).IsEverySignKnown);
    }

    [Fact]
    public void Names_that_the_font_lacks_stay_different_and_the_page_says_what_stands_for_them()
    {
        Poppler.SkipUnlessInstalled();
        PdfFile file = PdfReport.Of(Scene.Of(Scene.OtherLetters));
        string[] pages = [.. Poppler.Pages(file.Bytes).Select(Squeezed)];
        Assert.False(file.IsEverySignKnown);
        Assert.Contains("[panelA],[panelB],[inputA]standfornamesinotherletters", pages[0], StringComparison.Ordinal);
        Assert.All(["2*[panelA]", "[panelB]", "Ошибка-Ж", "On[inputA]"], shown => Assert.Contains(shown, pages[0], StringComparison.Ordinal));
        Assert.DoesNotContain(pages, page => page.Contains("??", StringComparison.Ordinal));
    }

    /// <summary>Where the next piece is a picture or must stay whole, a page may end early, but not by more than half.</summary>
    [Theory]
    [MemberData(nameof(Scene.Names), MemberType = typeof(Scene))]
    public void No_page_before_the_last_is_half_empty(string name)
    {
        Poppler.SkipUnlessInstalled();
        List<List<Word>> pages = Poppler.Words(PdfReport.Of(Scene.Report(name)).Bytes);
        const double FootPt = 788;
        Assert.All(pages[..^1], (page, index) => Assert.True(page.Where(word => word.BottomPt < FootPt).Max(word => word.BottomPt) > 420, $"page {index + 1}"));
    }

    /// <summary>The font has no emoji and no letters from right to left: each such sign is a question mark.</summary>
    private static string Shown(string text) => Unknown().Replace(text, "?");

    private static IEnumerable<ReportBlock.Table> Tables(ReportSection section) =>
        section.Blocks.OfType<ReportBlock.Table>().Concat(section.Blocks.OfType<ReportBlock.Steps>().SelectMany(steps => steps.Items).Select(step => step.Expected).OfType<ReportBlock.Table>());

    private static string WithoutHeadAndFoot(string page, int number, int count)
    {
        string foot = $"page{number}of{count}";
        Assert.Contains(foot, page, StringComparison.Ordinal);
        return page[(page.IndexOf(foot, StringComparison.Ordinal) + foot.Length)..];
    }

    private static string Squeezed(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));

    /// <summary>The part of the smaller frame that both cover.</summary>
    private static double Shared(Word one, Word other)
    {
        double acrossPt = Math.Min(one.RightPt, other.RightPt) - Math.Max(one.LeftPt, other.LeftPt);
        double downPt = Math.Min(one.BottomPt, other.BottomPt) - Math.Max(one.TopPt, other.TopPt);
        return acrossPt <= 0 || downPt <= 0 ? 0 : acrossPt * downPt / Math.Min(Area(one), Area(other));
    }

    private static double Area(Word word) => (word.RightPt - word.LeftPt) * (word.BottomPt - word.TopPt);

    [GeneratedRegex(@"/Title<FEFF(?<title>[0-9A-F\s]+)>/Parent", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Bookmark();

    [GeneratedRegex(@"/ID\[<[0-9A-F]{32}>", RegexOptions.None, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Identifier();

    [GeneratedRegex(@", part [2-9] of [2-9]\.", RegexOptions.None, matchTimeoutMilliseconds: 5000)]
    private static partial Regex FurtherPart();

    [GeneratedRegex(@"[\u0590-\u06ff]|[\ud800-\udbff][\udc00-\udfff]", RegexOptions.None, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Unknown();
}
