using System.Text;
using CsCheck;

namespace Arraywright.Files.Tests;

/// <summary>Plans damaged at random: whatever comes in, either a sound plan or located faults come out.</summary>
public sealed class PlanFuzzProperties
{
    private static readonly byte[][] Seeds =
    [
        .. Repository.Examples.Select(File.ReadAllBytes),
        Encoding.UTF8.GetBytes(Plans.Full),
        Encoding.UTF8.GetBytes(Plans.Small),
        Encoding.UTF8.GetBytes(StarterPlan.Text),
    ];

    private static readonly string[] Tokens =
    [
        "V", "A", "W", "%", "%/K", "mV/K", "kWh", "AWG", "mm2", "..", "-", "- ", ": ", ":", ",", ".", "|", "+", "*", "(", ")", "[", "]", "{", "}", "\n", "\r", "\t", "  ", "#", "&", "!", "'",
        "\"", "0", "-1", "1e999", "NaN", "inf", "0x1F", "~", "null", "---\n", "...\n", "<<: ", "? ", "\u2028", "\uFEFF", "\u00B5", "name", "count", "voc", "panels", "inputs", "wiring", "value", "shade",
        "%YAML 1.2\n", "@", "`", "\\", "\\u0000", ">", "|-\n",
    ];

    [Fact]
    public void A_damaged_plan_gives_faults_or_a_sound_plan()
    {
        int sound = 0;
        for (int seed = 0; seed < 3000; seed++)
        {
            Random random = new(seed);
            byte[] bytes = Damage(Seeds[seed % Seeds.Length], random.Next(1, 7), random);
            try
            {
                sound += Holds(bytes) ? 1 : 0;
            }
            catch (Exception trouble)
            {
                Assert.Fail($"Seed {seed}: {trouble.Message}\n{Encoding.Latin1.GetString(bytes)}");
            }
        }

        // Both ways out are taken often enough to mean something.
        Assert.InRange(sound, 100, 2900);
    }

    [Fact]
    public void Random_text_of_plan_words_gives_faults_or_a_sound_plan() =>
        Gen.Int[0, Tokens.Length - 1].Select(index => Tokens[index]).Array[0, 60].Select(tokens => Encoding.UTF8.GetBytes(string.Concat(tokens))).Sample(bytes => { Holds(bytes); }, iter: 3000, print: bytes => Encoding.UTF8.GetString(bytes));

    [Fact]
    public void Random_bytes_give_faults() => Gen.Byte.Array[0, 200].Sample(bytes => { Holds(bytes); }, iter: 1000);

    private static bool Holds(byte[] bytes)
    {
        PlanReading reading = PlanFile.ReadBytes(bytes, "fuzz.yaml");
        Assert.Equal(reading.Plan is null, reading.Faults.Count > 0);
        Assert.All(reading.Faults, fault => Assert.True(fault is { Line: > 0, Column: > 0, Found.Length: > 0, Expected.Length: > 0 }, fault.ToString()));
        if (reading.Plan is { } plan)
        {
            Assert.All(Dump.Doubles(plan), number => Assert.True(double.IsFinite(number)));
            Assert.NotEmpty(plan.Panels);
            Assert.NotEmpty(plan.Inputs);
            Assert.Equal(Dump.Of(plan), Dump.Of(PlanFile.Read(PlanWriter.Write(plan), "fuzz.yaml").Plan));
        }

        return reading.Plan is not null;
    }

    private static byte[] Damage(byte[] seed, int times, Random random)
    {
        List<byte> bytes = [.. seed];
        for (int i = 0; i < times && bytes.Count > 0; i++)
        {
            int at = random.Next(bytes.Count), length = Math.Min(random.Next(1, 30), bytes.Count - at);
            switch (random.Next(6))
            {
                case 0:
                    bytes[at] ^= (byte)(1 << random.Next(8));
                    break;
                case 1:
                    bytes.RemoveRange(at, length);
                    break;
                case 2:
                    bytes.InsertRange(random.Next(bytes.Count), bytes.GetRange(at, length));
                    break;
                case 3:
                    bytes.InsertRange(at, Encoding.UTF8.GetBytes(Tokens[random.Next(Tokens.Length)]));
                    break;
                case 4:
                    SwapWords(bytes, random);
                    break;
                default:
                    bytes[at] = (byte)random.Next(256);
                    break;
            }
        }

        return [.. bytes];
    }

    private static void SwapWords(List<byte> bytes, Random random)
    {
        string[] words = Encoding.Latin1.GetString([.. bytes]).Split(' ');
        int one = random.Next(words.Length), other = random.Next(words.Length);
        (words[one], words[other]) = (words[other], words[one]);
        bytes.Clear();
        bytes.AddRange(Encoding.Latin1.GetBytes(string.Join(' ', words)));
    }
}
