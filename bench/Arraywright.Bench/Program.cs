using System.Diagnostics;
using Arraywright.Electrical;
using Arraywright.Gear;

var rng = new Random(1);
PanelAtWork Rand(double shade = 1)
{
    double k = rng.NextDouble() < 0.5 ? 36 / 54.0 : 60 / 54.0;
    double s = (0.7 + 0.6 * rng.NextDouble());
    var p = new DiodeParameters(8.2271404 * s * shade, 4.372225e-10 * s, 0.3351 * k / s, s / 160.5 / k, 1.3921 * k);
    return new PanelAtWork([p.OneOf(3), p.OneOf(3), p.OneOf(3)], BypassDiode.Schottky(8 * s));
}
var ps = Enumerable.Range(0, 8).Select(i => Rand()).ToArray();
Wiring w = Wiring.InParallel([Wiring.InSeries(Enumerable.Range(0, 4).Select(i => (Wiring)new Wiring.Single("p" + i))), Wiring.InSeries(Enumerable.Range(4, 4).Select(i => (Wiring)new Wiring.Single("p" + i)))]);
var tree = CircuitTree.Of(w, n => ps[int.Parse(n.AsSpan(1))], new WireResistances(0.05, 0.01, 0.0005));
var c = new Circuit(tree);
Console.WriteLine($"Voc {c.OpenCircuitV} Isc {c.ShortCircuitA}");
foreach (var m in c.LocalMaxima()) Console.WriteLine($"{m.VoltageV} {m.CurrentA} {m.PowerW}");
double[] cur = new double[2000];
var win = new InputWindow(12, 100, 12, 13, 2000);
Console.WriteLine(c.TakenBy(win));
for (int r = 0; r < 3; r++)
{
    const int N = 2000;
    var sw = Stopwatch.StartNew(); for (int i = 0; i < N; i++) c.LocalMaxima(); Console.WriteLine($"all maxima {sw.Elapsed.TotalMicroseconds / N:f2} us");
    sw.Restart(); for (int i = 0; i < N; i++) c.MaximumPower(); Console.WriteLine($"max power {sw.Elapsed.TotalMicroseconds / N:f2} us");
    sw.Restart(); for (int i = 0; i < N; i++) c.TakenBy(win); Console.WriteLine($"taken {sw.Elapsed.TotalMicroseconds / N:f2} us");
    sw.Restart(); for (int i = 0; i < N; i++) c.PowerTakenW(win); Console.WriteLine($"power taken {sw.Elapsed.TotalMicroseconds / N:f2} us");
    sw.Restart(); for (int i = 0; i < N / 20; i++) c.Sweep(cur); Console.WriteLine($"sweep {sw.Elapsed.TotalMicroseconds / (N / 20):f1} us");
    sw.Restart(); for (int i = 0; i < N; i++) new Circuit(tree); Console.WriteLine($"build {sw.Elapsed.TotalMicroseconds / N:f2} us");
}
int bad = 0; int hills = 0;
for (int t = 0; t < 3000; t++)
{
    int n = rng.Next(2, 17);
    var pp = Enumerable.Range(0, n).Select(i => Rand(rng.NextDouble() < .3 ? rng.NextDouble() : 1)).ToArray();
    Wiring Tree(int lo, int hi, int d)
    {
        if (hi - lo == 1) return new Wiring.Single("p" + lo);
        int parts = rng.Next(2, Math.Min(hi - lo, 5) + 1); var cuts = new SortedSet<int>(); while (cuts.Count < parts - 1) cuts.Add(rng.Next(lo + 1, hi));
        var b = new List<int> { lo }; b.AddRange(cuts); b.Add(hi);
        var kids = Enumerable.Range(0, parts).Select(i => Tree(b[i], b[i + 1], d + 1)).ToArray();
        return rng.Next(2) == 0 ? Wiring.InSeries(kids) : Wiring.InParallel(kids);
    }
    var ww = Tree(0, n, 0);
    try
    {
        var cc = new Circuit(CircuitTree.Of(ww, x => pp[int.Parse(x.AsSpan(1))], new WireResistances(0.05, 0.01, 0.0005)));
        var ms = cc.LocalMaxima(); hills += ms.Length;
        // brute
        double[] f = new double[4001]; cc.Sweep(f); int count = 0; double st = cc.OpenCircuitV / 4000; double best = 0;
        for (int i = 1; i < 4000; i++) { double a = (i - 1) * st * f[i - 1], b = i * st * f[i], e = (i + 1) * st * f[i + 1]; if (b > a && b >= e) count++; best = Math.Max(best, b); }
        if (count > ms.Length) { bad++; Console.WriteLine($"brute {count} found {ms.Length}"); }
        if (best > cc.MaximumPower().PowerW * (1 + 1e-9)) { bad++; Console.WriteLine("missed best"); }
    }
    catch (ArithmeticException e) { bad++; Console.WriteLine(e.Message); }
}
Console.WriteLine($"bad {bad} hills {hills}");
