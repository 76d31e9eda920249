using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace Arraywright.Tests.Assembly;

/// <summary>A later room may call an earlier one, never the other way round.</summary>
public sealed partial class RoomTests
{
    /// <summary>From early to late. Climate takes cell temperature from Sky; Planning puts the rooms together.</summary>
    private static readonly string[] Rooms = ["Gear", "Electrical", "Sky", "Climate", "Limits", "Search", "Energy", "Planning", "Parts", "Growing"];

    [Fact]
    public void No_room_names_a_later_room()
    {
        string root = Path.Combine(Root(), "src", "Arraywright");
        List<string> arrowsBack = [];
        foreach (string file in Directory.GetFiles(root, "*.cs", SearchOption.AllDirectories))
        {
            string room = Path.GetRelativePath(root, file).Split(Path.DirectorySeparatorChar)[0];
            int here = Array.IndexOf(Rooms, room);
            if (here < 0)
            {
                continue;
            }

            arrowsBack.AddRange(UsedRoom().Matches(File.ReadAllText(file))
                .Select(use => use.Groups["room"].Value)
                .Where(used => Array.IndexOf(Rooms, used) > here)
                .Select(used => $"{Path.GetRelativePath(root, file)} uses {used}"));
        }

        Assert.Empty(arrowsBack);
    }

    [Fact]
    public void No_member_speaks_of_a_later_room()
    {
        const BindingFlags own = BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;
        Type[] types = [.. typeof(Plan).Assembly.GetTypes().Where(type => Room(type) >= 0)];
        Assert.True(types.Length > 100);
        string[] arrowsBack =
        [
            .. from type in types
               from spoken in type.GetFields(own).Select(field => field.FieldType)
                   .Concat(type.GetMethods(own).SelectMany(method => method.GetParameters().Select(parameter => parameter.ParameterType).Append(method.ReturnType)))
                   .Concat(type.GetConstructors(own).SelectMany(constructor => constructor.GetParameters().Select(parameter => parameter.ParameterType)))
               from part in Parts(spoken)
               where Room(part) > Room(type)
               select $"{type.FullName} speaks of {part.FullName}",
        ];
        Assert.Empty(arrowsBack.Distinct());
    }

    /// <summary>A type, what it is an array or reference of, and what it is generic in.</summary>
    private static IEnumerable<Type> Parts(Type type) => type.HasElementType
        ? Parts(type.GetElementType()!)
        : type.GetGenericArguments().SelectMany(Parts).Prepend(type);

    private static int Room(Type type) => type.Namespace is { } name && name.StartsWith("Arraywright.", StringComparison.Ordinal) ? Array.IndexOf(Rooms, name.Split('.')[1]) : -1;

    [Fact]
    public void Every_room_is_in_the_order_and_says_what_it_is()
    {
        string[] folders = [.. Directory.GetDirectories(Path.Combine(Root(), "src", "Arraywright")).Select(folder => Path.GetFileName(folder)!)];
        Assert.Equal(Rooms.Order(StringComparer.Ordinal), folders.Order(StringComparer.Ordinal));
        Assert.All(folders, folder =>
        {
            string[] lines = File.ReadAllLines(Path.Combine(Root(), "src", "Arraywright", folder, "README.md"));
            Assert.InRange(lines.Length, 3, 15);
        });
    }

    [Fact]
    public void Every_file_that_the_documents_name_exists()
    {
        string root = Root();
        string[] documents = [.. Directory.GetFiles(Path.Combine(root, "docs"), "*.md"), Path.Combine(root, "README.md"), Path.Combine(root, "CONTRIBUTING.md")];
        string[] missing =
        [
            .. documents
                .SelectMany(document => NamedFile().Matches(File.ReadAllText(document)).Select(match => match.Value))
                .Where(path => !File.Exists(Path.Combine(root, path)))
                .Distinct(),
        ];
        Assert.Empty(missing);
    }

    [Fact]
    public void Every_link_between_documents_leads_somewhere()
    {
        string root = Root();
        string[] documents = [.. Directory.GetFiles(root, "*.md"), .. Directory.GetFiles(Path.Combine(root, "docs"), "*.md"), .. Directory.GetFiles(Path.Combine(root, "src"), "README.md", SearchOption.AllDirectories)];
        Assert.True(documents.Length > 10);
        Assert.Empty(documents.SelectMany(document => Links(document).Where(link => !Path.Exists(link)).Select(link => $"{Path.GetRelativePath(root, document)}: {link}")));
    }

    /// <summary>Links to files from where the document stands, and documents named from the root.</summary>
    private static IEnumerable<string> Links(string document)
    {
        string text = File.ReadAllText(document);
        return
        [
            .. Link().Matches(text).Select(match => Path.Combine(Path.GetDirectoryName(document)!, match.Groups["to"].Value)),
            .. NamedDocument().Matches(text).Select(match => Path.Combine(Root(), match.Groups["to"].Value)),
        ];
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(here, "..", "..", "..", ".."));

    [GeneratedRegex(@"^using (static )?Arraywright\.(?<room>[A-Z][a-z]+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex UsedRoom();

    [GeneratedRegex(@"\]\((?<to>[^):#]+)(#[^)]*)?\)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Link();

    [GeneratedRegex(@"`(?<to>docs/[a-z-]+\.md)`", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex NamedDocument();

    [GeneratedRegex(@"\b(src|tests)/[A-Za-z./-]+\.cs\b", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex NamedFile();
}
