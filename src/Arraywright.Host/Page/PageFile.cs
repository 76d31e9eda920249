using System.Collections.Immutable;

namespace Arraywright.Host.Page;

/// <summary>One file of the page.</summary>
/// <param name="Type">Its media type.</param>
/// <param name="IsForever">True when its name changes with what is in it, so that it need never be asked for again.</param>
/// <param name="Twins">The file as it is, last, and before it its compressed twins, smallest first.</param>
internal sealed record PageFile(string Type, bool IsForever, ImmutableArray<PageTwin> Twins);

/// <summary>A file of the page as it goes over the line.</summary>
/// <param name="Encoding">Its content encoding; null for as it is.</param>
/// <param name="Bytes">What is sent.</param>
/// <param name="Tag">Its entity tag: another for other bytes.</param>
internal sealed record PageTwin(string? Encoding, byte[] Bytes, string Tag);
