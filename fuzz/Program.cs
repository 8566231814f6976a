using System.Globalization;
using System.Security.Cryptography;
using Hoopwright.Fuzz;
using Hoopwright.Testing.Fuzz;

const int InputsAtATime = 20_000;
if (args is not [var name, var count, .. var rest] || !int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out int inputs)
    || FuzzTargets.All.FirstOrDefault(each => each.Name == name) is not { } target)
{
    Console.Error.WriteLine($"Usage: TARGET INPUTS [SEED]; targets: {string.Join(", ", FuzzTargets.All.Select(each => each.Name))}");
    return 2;
}
int seed = rest is [var given] && int.TryParse(given, NumberStyles.None, CultureInfo.InvariantCulture, out int own) ? own : 1;
string corpus = Path.Combine(AppContext.BaseDirectory, "corpus", name), faults = Path.Combine(AppContext.BaseDirectory, "faults", name);
Directory.CreateDirectory(corpus);
Directory.CreateDirectory(faults);
// What led somewhere new in earlier runs is where this one begins.
target = target with { Seeds = [.. target.Seeds, .. Directory.GetFiles(corpus).Order(StringComparer.Ordinal).Select(File.ReadAllBytes)] };
using Coverage coverage = new();
Fuzzer fuzzer = new(target, seed, coverage.IsNew);
// By and by, so that what was found is kept when the run is stopped, and one can see how far it is.
for (int fed = 0; fed < inputs;)
{
    int more = Math.Min(InputsAtATime, inputs - fed);
    fuzzer.Run(more);
    fed += more;
    foreach (byte[] kept in fuzzer.Corpus.Skip(target.Seeds.Length)) Keep(corpus, kept, "");
    foreach ((byte[] input, string fault) in fuzzer.Found.DistinctBy(found => string.Join('\n', found.Fault.Split('\n').Take(4)))) Keep(faults, input, fault);
    (fed < inputs ? Console.Error : Console.Out).WriteLine(string.Create(CultureInfo.InvariantCulture,
        $"{name}: {fed} inputs, {fuzzer.Whole} gave a result, {coverage.Ways} ways, {fuzzer.Corpus.Count} kept, slowest {fuzzer.Slowest.TotalMilliseconds:0} ms, most memory for one {fuzzer.MostTaken / 1e6:0} MB, {fuzzer.Found.Count} faults"));
}
foreach (string fault in fuzzer.Found.Select(found => string.Join("  ", found.Fault.Split('\n').Take(3))).Distinct().Take(10)) Console.WriteLine("  " + fault);
return fuzzer.Found.Count == 0 ? 0 : 1;

static void Keep(string folder, byte[] input, string fault)
{
    string file = Path.Combine(folder, Convert.ToHexStringLower(SHA256.HashData(input))[..16]);
    if (File.Exists(file)) return;
    File.WriteAllBytes(file, input);
    if (fault.Length > 0) File.WriteAllText(file + ".txt", fault);
}
