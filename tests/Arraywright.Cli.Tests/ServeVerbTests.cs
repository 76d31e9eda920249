namespace Arraywright.Cli.Tests;

public sealed class ServeVerbTests
{
    [Theory]
    [InlineData("--port", "65536", "a whole number from 0 to 65535")]
    [InlineData("--port", "8x", "a whole number from 0 to 65535")]
    [InlineData("--listen", "shed", "an address such as 127.0.0.1")]
    [InlineData("--base", "sun", "a path such as /arraywright")]
    [InlineData("--base", "/a/../b", "a path such as /arraywright")]
    [InlineData("--page", "nowhere", "a folder with an index.html")]
    [InlineData("--rate", "0", "a whole number from 1 to 10000")]
    [InlineData("--limit", "1.5", "a whole number from 1 to 3600")]
    public void A_wrong_option_is_told(string option, string value, string expected)
    {
        (int exit, string output, string error) = Session.Run("serve", option, value);
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains($"{option}: found \"{value}\"; expected {expected}", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_program_that_serves_it_says_what_is_missing_and_how_to_get_it()
    {
        (int exit, _, string error) = Session.Run("serve");
        Assert.Equal(2, exit);
        Assert.Contains(Path.Combine("host", "arraywright-host"), error, StringComparison.Ordinal);
        Assert.Contains("./arraywright serve", error, StringComparison.Ordinal);
    }
}
