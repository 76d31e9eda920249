using System.Globalization;
using System.Text;
using Arraywright.Fonts;
using Arraywright.Presentation.Report;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Arraywright.Print.Setting;

/// <summary>The font at every size, how wide its text comes out, and which signs it has.</summary>
internal sealed class Letters
{
    private const string Family = "Inter";
    private static readonly Lock Setup = new();

    private readonly Dictionary<(double SizePt, bool IsBold), XFont> _fonts = [];
    private readonly Dictionary<(XFont Font, string Text), double> _widthsPt = [];
    private readonly Dictionary<string, bool> _known = new(StringComparer.Ordinal);
    private readonly XGraphics _measure;

    /// <param name="names">Names that the texts may hold.</param>
    public Letters(IEnumerable<ReportName> names)
    {
        // The PDF library finds its fonts through one setting for the whole process.
        lock (Setup)
        {
            GlobalFontSettings.FontResolver ??= new Resolver();
        }

        StandIns = new StandIns(names, name => Signs(name).All(Has));
        _measure = XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);
    }

    /// <summary>What stands for names that the font cannot show.</summary>
    public StandIns StandIns { get; }

    /// <summary>False once a text had a sign that the font lacks.</summary>
    public bool IsEverySignKnown { get; private set; } = true;

    /// <summary>The font of a size and weight.</summary>
    public XFont Font(double sizePt, bool isBold)
    {
        if (!_fonts.TryGetValue((sizePt, isBold), out XFont? font))
        {
            font = new XFont(Family, sizePt, isBold ? XFontStyleEx.Bold : XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode));
            _fonts.Add((sizePt, isBold), font);
        }

        return font;
    }

    /// <summary>Width of a text whose signs are all known, pt.</summary>
    public double WidthPt(XFont font, string text)
    {
        if (text.Length == 0)
        {
            return 0;
        }

        if (!_widthsPt.TryGetValue((font, text), out double widthPt))
        {
            widthPt = _measure.MeasureString(text, font).Width;
            _widthsPt.Add((font, text), widthPt);
        }

        return widthPt;
    }

    /// <summary>The text with a stand-in for each name, and a question mark for each other sign, that the font lacks.</summary>
    public string Known(string text) => KnownSigns(StandIns.In(text));

    /// <summary>The same of a text in a drawing.</summary>
    public string KnownInDrawing(string text) => KnownSigns(StandIns.InDrawing(text));

    private string KnownSigns(string text)
    {
        bool isKnown = true;
        StringBuilder known = new(text.Length);
        foreach (string sign in Signs(text))
        {
            bool has = Has(sign);
            isKnown &= has;
            known.Append(has ? sign : "?");
        }

        IsEverySignKnown &= isKnown;
        return known.ToString();
    }

    private static IEnumerable<string> Signs(string text)
    {
        TextElementEnumerator signs = StringInfo.GetTextElementEnumerator(text);
        while (signs.MoveNext())
        {
            yield return signs.GetTextElement();
        }
    }

    private bool Has(string sign)
    {
        if (!_known.TryGetValue(sign, out bool has))
        {
            XFont font = Font(10, isBold: false);
            has = sign.EnumerateRunes().All(rune => rune.Value is ' ' or TiedFigures.Tie || GlyphHelper.GlyphIndexFromCodePoint(rune.Value, font) != 0);
            _known.Add(sign, has);
        }

        return has;
    }

    private sealed class Resolver : IFontResolver
    {
        public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? InterFont.Bold : InterFont.Regular);

        public byte[] GetFont(string faceName)
        {
            using Stream font = InterFont.Open(faceName);
            byte[] bytes = new byte[font.Length];
            font.ReadExactly(bytes);
            return bytes;
        }
    }
}
