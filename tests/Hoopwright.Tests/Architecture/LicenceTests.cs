using System.Text.Json;
using System.Xml.Linq;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Architecture;

/// <summary>
/// The licence of every package that anything here is made with, as its own nuspec says it (SPDX identifiers): what is handed on is under licences
/// that permit it without more than a notice; what only tests and tools use may also be under one that asks for changes to be shown.
/// </summary>
public sealed class LicenceTests
{
    private static readonly HashSet<string> HandedOn = ["MIT", "MIT-0", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "PostgreSQL"];
    private static readonly HashSet<string> ForTests = [.. HandedOn, "MPL-2.0"];

    [Theory]
    [InlineData("src", 30)]
    [InlineData("tests", 80)]
    [InlineData("bench", 30)]
    [InlineData("fuzz", 1)]
    [InlineData("mutants", 1)]
    [InlineData("release", 0)]
    public void Every_package_is_under_a_licence_that_permits_its_use(string folder, int atLeast)
    {
        HashSet<string> permitted = folder == "src" ? HandedOn : ForTests;
        SortedDictionary<string, string> licences = new(StringComparer.Ordinal);
        foreach (string file in Directory.GetFiles(Path.Combine(SamplePlans.Root, folder), "packages.lock.json", SearchOption.AllDirectories)) Collect(file, licences);
        Assert.True(licences.Count >= atLeast, $"{licences.Count} packages were found under {folder}.");
        Assert.Empty(licences.Where(each => !permitted.Contains(each.Value)).Select(each => $"{each.Key}: {each.Value}"));
    }

    private static void Collect(string lockFile, SortedDictionary<string, string> licences)
    {
        using JsonDocument locked = JsonDocument.Parse(File.ReadAllText(lockFile));
        using JsonDocument assets = JsonDocument.Parse(File.ReadAllText(Path.Combine(Path.GetDirectoryName(lockFile)!, "obj", "project.assets.json")));
        string[] roots = [.. assets.RootElement.GetProperty("packageFolders").EnumerateObject().Select(root => root.Name)];
        foreach (JsonProperty package in locked.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(target => target.Value.EnumerateObject()))
        {
            if (!package.Value.TryGetProperty("resolved", out JsonElement version)) continue;
            string name = package.Name.ToLowerInvariant(), path = Path.Combine(name, version.GetString()!.ToLowerInvariant());
            // Of a package that is not on this machine, such as one for another kind of machine, nothing can be said.
            if (roots.Select(root => Path.Combine(root, path)).FirstOrDefault(Directory.Exists) is { } found) licences[$"{package.Name} {version}"] = LicenceOf(found);
        }
    }

    private static string LicenceOf(string folder)
    {
        XElement metadata = XDocument.Load(Directory.GetFiles(folder, "*.nuspec").Single()).Root!.Elements().First(element => element.Name.LocalName == "metadata");
        if (metadata.Elements().FirstOrDefault(element => element.Name.LocalName == "license") is not { } licence) return "none said";
        if (licence.Attribute("type")?.Value != "file") return licence.Value.Trim();
        // A text in the place of an identifier is known by its words.
        string text = File.ReadAllText(Path.Combine(folder, licence.Value.Trim()));
        return text.Contains("Permission is hereby granted, free of charge", StringComparison.Ordinal) && text.Contains("MIT", StringComparison.Ordinal) ? "MIT" : licence.Value.Trim();
    }
}
