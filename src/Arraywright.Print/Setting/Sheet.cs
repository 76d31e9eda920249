using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;
using PdfSharp.UniversalAccessibility;

namespace Arraywright.Print.Setting;

/// <summary>The page being drawn: every text belongs to a tag, every line and area is an ornament.</summary>
internal sealed class Sheet(PdfPage page, XGraphics graphics, StructureBuilder tags, IReadOnlyDictionary<string, int> pageByAnchor)
{
    /// <summary>What pictures are drawn on.</summary>
    public XGraphics Graphics => graphics;

    /// <summary>On which page each section begins, from 1.</summary>
    public IReadOnlyDictionary<string, int> PageByAnchor => pageByAnchor;

    /// <summary>Begins a group of blocks.</summary>
    public void Begin(PdfGroupingElementTag tag) => tags.BeginElement(tag);

    /// <summary>Begins a block.</summary>
    public void Begin(PdfBlockLevelElementTag tag) => tags.BeginElement(tag);

    /// <summary>Begins a picture.</summary>
    public void BeginFigure(string description, XRect box) => tags.BeginElement(PdfIllustrationElementTag.Figure, description, box);

    /// <summary>Begins what is repeated or ornament, and not read out.</summary>
    public void BeginOrnament() => tags.BeginArtifact();

    /// <summary>Begins a link to a page over an area.</summary>
    public void BeginLink(XRect area, int toPage, string text)
    {
        PdfRectangle rectangle = new(graphics.Transformer.WorldToDefaultPage(area));
        tags.BeginElement(PdfLinkAnnotation.CreateDocumentLink(rectangle, toPage), text);
    }

    /// <summary>Ends what was begun last.</summary>
    public void End() => tags.End();

    /// <summary>Writes a line.</summary>
    public void Write(TextLine line, double leftPt, double topPt, double sizePt, XColor color)
    {
        XSolidBrush brush = new(color);
        foreach (Run run in line.Runs)
        {
            graphics.DrawString(run.Text, run.Font, brush, leftPt + run.LeftPt, topPt + (Layout.Baseline * sizePt));
        }
    }

    /// <summary>A line across.</summary>
    public void Rule(double leftPt, double rightPt, double atPt, double thicknessPt, XColor color) =>
        Ornament(() => graphics.DrawLine(new XPen(color, thicknessPt), leftPt, atPt, rightPt, atPt));

    /// <summary>A filled area.</summary>
    public void Fill(XRect area, XColor color) => Ornament(() => graphics.DrawRectangle(new XSolidBrush(color), area));

    private void Ornament(Action draw)
    {
        tags.BeginArtifact();
        draw();
        tags.End();
    }

    /// <summary>The page itself.</summary>
    public PdfPage Page => page;
}
