using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Hoopwright.Mutants;

if (args is not [var copy, var count, .. var names] || !int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out int most)
    || names.Any(name => !Area.All.Any(area => area.Name == name)))
{
    Console.Error.WriteLine($"Usage: COPY COUNT [AREA...]; areas: {string.Join(", ", Area.All.Select(area => area.Name))}");
    return 2;
}
Area[] areas = [.. Area.All.Where(area => names.Length == 0 || names.Contains(area.Name))];
Garden garden = new(copy);
Fault[] faults = garden.Plant(areas);
Console.WriteLine("| area | faults there are | tried | noticed | not come by | part noticed |");
Console.WriteLine("|---|---|---|---|---|---|");
int left = 0;
foreach (Area area in areas)
{
    (HashSet<int> reached, TimeSpan took) = garden.Look(area);
    Fault[] all = [.. faults.Where(fault => fault.Area == area)];
    // The same ones in every run of the same source, from all over it.
    Fault[] tried = [.. all.OrderBy(fault => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes($"{Path.GetFileName(fault.File)}:{fault.Line}:{fault.Is}:{fault.Becomes}"))), StringComparer.Ordinal).Take(most)];
    bool[] noticed = new bool[tried.Length];
    Parallel.For(0, tried.Length, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
        number => noticed[number] = reached.Contains(tried[number].Number) && garden.Notices(tried[number], TimeSpan.FromSeconds(20) + (took * 5)));
    int found = noticed.Count(each => each);
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
        $"| {area.Name} | {all.Length:#,0} | {tried.Length} | {found} | {tried.Count(fault => !reached.Contains(fault.Number))} | {100.0 * found / Math.Max(1, tried.Length):0} % |"));
    left += tried.Length - found;
    foreach (Fault fault in tried.Where((_, number) => !noticed[number]))
    {
        Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"  {(reached.Contains(fault.Number) ? "not noticed" : "not come by")}: {Path.GetRelativePath(copy, fault.File)}:{fault.Line}: {fault.Is} -> {fault.Becomes}"));
    }
}
return left == 0 ? 0 : 1;
