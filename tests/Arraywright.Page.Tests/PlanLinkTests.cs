using Arraywright.Page.Document;
using CsCheck;

namespace Arraywright.Page.Tests;

public sealed class PlanLinkTests
{
    [Fact]
    public void Any_text_comes_back_from_its_link() =>
        Gen.String.Where(text => text.Length > 0 && !text.Any(char.IsSurrogate)).Sample(text => Assert.Equal(text, PlanLink.Read(PlanLink.Write(text))));

    [Fact]
    public void No_fragment_at_all_throws() => Gen.String.Sample(text => { _ = PlanLink.Read(text); _ = PlanLink.Read(PlanLink.Mark + text); });

    [Fact]
    public void Bare_figures_get_the_unit_of_their_field_and_are_shown_without_it()
    {
        Assert.Equal("22.9 V", FieldUnit.Written("22.9", "V"));
        Assert.Equal("22.9", FieldUnit.Shown("22.9 V", "V"));
        Assert.Equal("14 F", FieldUnit.Written("14 F", "C"));
        Assert.Equal("14 F", FieldUnit.Shown("14 F", "C"));
        Assert.Equal("ft", FieldUnit.For("m", isUs: true));
    }
}
