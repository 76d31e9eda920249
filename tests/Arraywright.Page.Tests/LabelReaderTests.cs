using Arraywright.Page.Forms;

namespace Arraywright.Page.Tests;

public sealed class LabelReaderTests
{
    // Layouts as labels and datasheets have them; the figures are those of the examples.
    [Theory]
    [InlineData("Pmax 120W  Voc 22.9V  Isc 6.72A  Vmp 18.9V  Imp 6.35A", "voc 22.9 V|vmp 18.9 V|isc 6.72 A|imp 6.35 A|power 120 W")]
    [InlineData("22.9V 6.72A 18.9V 6.35A", "voc 22.9 V|vmp 18.9 V|isc 6.72 A|imp 6.35 A")]
    [InlineData("Rated Power: 180 W\nOpen Circuit Voltage (Voc): 44.6 V\nShort Circuit Current (Isc): 5.32 A\nMaximum System Voltage: 600 V\nMaximum Series Fuse Rating: 10 A", "voc 44.6 V|isc 5.32 A|power 180 W|max_system_voltage 600 V|max_series_fuse 10 A")]
    [InlineData("Umpp 18,4 V Impp 5,44 A Leerlaufspannung 22,3 V Kurzschlussstrom 5,86 A", "voc 22.3 V|vmp 18.4 V|isc 5.86 A|imp 5.44 A")]
    [InlineData("Temperature coefficient of Voc -0.29 %/°C", "voc_temperature -0.29 %/K")]
    [InlineData("no figures here", "")]
    public void The_figures_of_a_label_are_found_by_their_names_or_their_size(string text, string expected) =>
        Assert.Equal(expected, string.Join('|', LabelReader.Read(text).Select(entry => $"{entry.Key} {entry.Value}")));
}
