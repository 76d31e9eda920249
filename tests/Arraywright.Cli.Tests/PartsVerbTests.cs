using System.Text.Json;
using Arraywright.Files.Tests;

namespace Arraywright.Cli.Tests;

public sealed class PartsVerbTests
{
    private static string Example(string name) => Path.Combine(Repository.Root, "examples", name + ".yaml");

    [Fact]
    public void The_json_has_every_piece_with_its_place_and_what_is_owned_is_taken_off()
    {
        (int exit, string output, string error) = Session.Run("parts", Example("orchard-fuses"), "--json");
        Assert.Equal((0, ""), (exit, error));
        JsonElement list = JsonDocument.Parse(output).RootElement;
        foreach (string name in new[] { "format", "plan", "verdict", "assumed", "cautions", "rules", "currency", "inputs", "shopping", "alternatives" })
        {
            Assert.True(list.TryGetProperty(name, out _), name);
        }

        JsonElement[] pieces = [.. list.GetProperty("inputs")[0].GetProperty("pieces").EnumerateArray()];

        // Eight panels with two leads; four strings with two cables and a fuse; a branch connector and a run a pole; switch, meter, adapter.
        Assert.Equal(16 + 8 + 4 + 2 + 2 + 3, pieces.Length);
        Assert.Equal(["pump-store/1", "pump-store/2", "pump-store/3", "pump-store/4"], pieces.Where(piece => piece.GetProperty("kind").GetString() == "string_fuse").Select(piece => piece.GetProperty("place").GetString()));
        JsonElement branches = list.GetProperty("shopping").EnumerateArray().Single(line => line.GetProperty("what").GetString()!.StartsWith("branch", StringComparison.Ordinal));
        Assert.Equal((2, 1, 1), (branches.GetProperty("needed").GetInt32(), branches.GetProperty("owned").GetInt32(), branches.GetProperty("buy").GetInt32()));

        // What the circuit loses on the way, watts, from its own volts and amps: 27 W or so; the pieces' sum is the same figure.
        double heatW = pieces.Sum(piece => piece.GetProperty("ohm").GetDouble() * Math.Pow(piece.GetProperty("current_a").GetDouble(), 2));
        Assert.Equal(pieces.Sum(piece => piece.GetProperty("drop_v").GetDouble() * piece.GetProperty("current_a").GetDouble()), heatW, 1e-6);
    }

    [Fact]
    public void The_page_fits_80_columns_and_has_its_cautions_for_every_example()
    {
        foreach (string example in Repository.Examples)
        {
            (int exit, string output, string error) = Session.Run("parts", example);
            Assert.Empty(error);
            Assert.InRange(exit, 0, 1);
            Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
            Assert.Contains("Before you touch a lead", output, StringComparison.Ordinal);
            Assert.DoesNotContain("NaN", output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_list_for_the_shop_is_written_with_quotes_where_commas_stand_and_replaces_what_was_there()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        string file = Path.Combine(folder, "shop.csv");
        File.WriteAllText(file, "old");
        Assert.Equal(0, Session.Run("parts", Example("orchard-fuses"), "--csv", file, "--quiet").Exit);
        string[] lines = File.ReadAllLines(file);
        Assert.StartsWith("what,rating,needed,needed_m,owned,owned_m,buy,buy_m,unit_price,price,currency", lines[0], StringComparison.Ordinal);
        Assert.Contains(lines, line => line.StartsWith("\"branch connector, 4 into 1, half for plus, half for minus\",\"at least 40 A, 600 V DC\",2,,1,,1,,19,19,EUR", StringComparison.Ordinal));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void A_file_that_cannot_be_written_is_said_and_nothing_is_left_beside_it()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        (int exit, string output, string error) = Session.Run("parts", Example("orchard-fuses"), "--csv", Path.Combine(folder, "no", "shop.csv"));
        Assert.Equal((2, ""), (exit, output));
        Assert.StartsWith("arraywright: cannot write \"", error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(folder));

        // A folder stands where the file should go: it stays.
        Directory.CreateDirectory(Path.Combine(folder, "taken"));
        Assert.Equal(2, Session.Run("parts", Example("orchard-fuses"), "--csv", Path.Combine(folder, "taken")).Exit);
        Assert.Equal([Path.Combine(folder, "taken")], Directory.GetFileSystemEntries(folder));
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("🐑🔋 & \\\"both\\\"")]
    [InlineData("حقل شمالي")]
    public void A_title_of_any_letters_comes_out_as_text(string title)
    {
        foreach (string name in new[] { title, string.Concat(Enumerable.Repeat(title, 20))[..Math.Min(200, title.Length * 20)] })
        {
            string folder = Directory.CreateTempSubdirectory().FullName;
            string file = Path.Combine(folder, "shed.yaml");
            string written = (name.EndsWith('\\') ? name[..^1] : name).Trim();
            File.WriteAllText(file, File.ReadAllText(Example("orchard-fuses")).Replace("plan: Orchard pump house", $"plan: \"{written}\"", StringComparison.Ordinal));
            (int exit, string output, _) = Session.Run("parts", file, "--json");
            Assert.Equal(0, exit);
            Assert.Equal(written.Replace("\\\"", "\"", StringComparison.Ordinal), JsonDocument.Parse(output).RootElement.GetProperty("plan").GetString());
            Assert.DoesNotContain('\e', Session.Run("parts", file, "--no-color").Output);
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData(40)]
    [InlineData(25)]
    public void The_weakest_piece_stops_and_quiet_says_so_in_one_sentence(double connectorA)
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        string file = Path.Combine(folder, "shed.yaml");
        string weak = File.ReadAllText(Example("orchard-fuses")).Replace("socket: 50 A", "socket: 20 A", StringComparison.Ordinal);
        File.WriteAllText(file, weak.Replace("connector: 40 A", $"connector: {connectorA} A", StringComparison.Ordinal));
        (int exit, string output, _) = Session.Run("parts", file, "--quiet");
        Assert.Equal(1, exit);
        Assert.StartsWith("STOP: do not build it like this.", output, StringComparison.Ordinal);
        Assert.Contains("socket", output, StringComparison.Ordinal);
        Assert.Contains("33.60 A, at most 20 A", string.Join(' ', output.Split('\n')), StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }
}
