using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;
using PdfSharp.UniversalAccessibility;

namespace Arraywright.Print.Setting;

/// <summary>Where a link or a bookmark leads.</summary>
/// <param name="Page">The page, from 1.</param>
/// <param name="FromBottomPt">How far above its lower edge.</param>
internal readonly record struct Target(int Page, double FromBottomPt);

/// <summary>The page being drawn: every text belongs to a tag, every line and area is an ornament.</summary>
internal sealed class Sheet(XGraphics graphics, StructureBuilder tags, IReadOnlyDictionary<string, Target> targets)
{
    /// <summary>What pictures are drawn on.</summary>
    public XGraphics Graphics => graphics;

    /// <summary>Where each section begins.</summary>
    public IReadOnlyDictionary<string, Target> Targets => targets;

    /// <summary>Begins a group of blocks.</summary>
    public void Begin(PdfGroupingElementTag tag) => tags.BeginElement(tag);

    /// <summary>Begins a block.</summary>
    public void Begin(PdfBlockLevelElementTag tag) => tags.BeginElement(tag);

    /// <summary>Begins a picture.</summary>
    public void BeginFigure(string description, XRect box) => tags.BeginElement(PdfIllustrationElementTag.Figure, description, box);

    /// <summary>Begins what is repeated or ornament, and not read out.</summary>
    public void BeginOrnament() => tags.BeginArtifact();

    /// <summary>Begins a link over an area. The library gives each a random name and the hour of the clock: both go.</summary>
    public void BeginLink(XRect area, Target to, string text)
    {
        PdfRectangle rectangle = new(graphics.Transformer.WorldToDefaultPage(area));
        PdfLinkAnnotation link = PdfLinkAnnotation.CreateDocumentLink(rectangle, to.Page, new XPoint(0, to.FromBottomPt));
        tags.BeginElement(link, text);
        link.Elements.Remove(PdfAnnotation.Keys.NM);
        link.Elements.Remove(PdfAnnotation.Keys.M);
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
}
