namespace Arraywright.Files.Text;

/// <summary>Collects the faults of one file.</summary>
internal sealed class FaultList(string file, string whole = "a plan file")
{
    /// <summary>Nobody reads more; a broken file of a megabyte must not print a hundred thousand lines.</summary>
    private const int Most = 200;

    private readonly List<Fault> _faults = [];

    public int Count { get; private set; }

    /// <summary>True when no further fault is kept, so that none need be worked out.</summary>
    public bool IsFull => Count > Most;

    /// <summary>True once reading broke off midway: what is missing may stand in the part not read, so it is not called missing.</summary>
    public bool BrokeOff { get; set; }

    public void Add(int line, int column, string found, string expected, string? hint = null)
    {
        Count++;
        if (_faults.Count < Most)
        {
            _faults.Add(new Fault(file, line, column, found, expected, hint));
        }
    }

    public void Add(Yaml.YamlNode at, string found, string expected, string? hint = null) =>
        Add(at.Line, at.Column, found, expected, hint);

    /// <summary>All faults by line and column; of two at one place, the one found first.</summary>
    public IReadOnlyList<Fault> InFileOrder()
    {
        if (Count == 0)
        {
            return [];
        }

        Fault[] ordered = [.. _faults.OrderBy(static fault => fault.Line).ThenBy(static fault => fault.Column)];
        return Count <= Most
            ? ordered
            : [.. ordered, ordered[^1] with { Found = $"{Count - Most} faults more", Expected = whole, Hint = "mend those above first" }];
    }
}
