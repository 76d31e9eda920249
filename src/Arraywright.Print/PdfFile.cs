namespace Arraywright.Print;

/// <summary>A report as PDF.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="PageCount">How many pages it has.</param>
/// <param name="IsEverySignKnown">False where the font lacks a sign of a text: the first page says what stands for it.</param>
public sealed record PdfFile(byte[] Bytes, int PageCount, bool IsEverySignKnown);
