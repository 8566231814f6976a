using System.Text;
using System.Text.Json;
using System.Xml.Linq;

namespace Hoopwright.Release;

/// <summary>What the licences of the packages in a release ask to be said: name, version, who owns it, the licence, and its text where the package has it.</summary>
internal static class Notices
{
    /// <summary>The notices of all packages that projects run with.</summary>
    /// <param name="assets">The project.assets.json files of the projects.</param>
    public static string Of(IEnumerable<string> assets)
    {
        SortedDictionary<string, string> packages = new(StringComparer.Ordinal);
        foreach (string file in assets) Collect(file, packages);
        StringBuilder text = new("This software is made with the packages below. Each is under its own licence.\n");
        Dictionary<string, string> told = [];
        foreach ((string name, string folder) in packages) text.Append(One(name, folder, told));
        return text.ToString();
    }

    private static void Collect(string file, SortedDictionary<string, string> packages)
    {
        using JsonDocument assets = JsonDocument.Parse(File.ReadAllText(file));
        string[] roots = [.. assets.RootElement.GetProperty("packageFolders").EnumerateObject().Select(root => root.Name)];
        foreach (JsonProperty target in assets.RootElement.GetProperty("targets").EnumerateObject())
        {
            // What only looks at the sources while they are built is in no program.
            foreach (JsonProperty library in target.Value.EnumerateObject().Where(library => library.Value.GetProperty("type").GetString() == "package" && library.Value.TryGetProperty("runtime", out _)))
            {
                string path = assets.RootElement.GetProperty("libraries").GetProperty(library.Name).GetProperty("path").GetString() ?? "";
                packages[library.Name] = roots.Select(root => Path.Combine(root, path)).First(Directory.Exists);
            }
        }
    }

    private static string One(string name, string folder, Dictionary<string, string> told)
    {
        XElement metadata = XDocument.Load(Directory.GetFiles(folder, "*.nuspec").Single()).Root!.Elements().First(element => element.Name.LocalName == "metadata");
        string Field(string field) => metadata.Elements().FirstOrDefault(element => element.Name.LocalName == field)?.Value.Trim() ?? "";
        string licence = Field("license") is { Length: > 0 } said ? said : Field("licenseUrl");
        StringBuilder text = new($"\n----------------------------------------------------------------\n{name.Replace('/', ' ')}\nLicence: {(licence.Length == 0 ? "see its project" : licence)}\n");
        if (Field("copyright") is { Length: > 0 } copyright) text.Append(copyright).Append('\n');
        else if (Field("authors") is { Length: > 0 } authors) text.Append(authors).Append('\n');
        if (Field("projectUrl") is { Length: > 0 } project) text.Append(project).Append('\n');
        foreach (string file in Directory.GetFiles(folder).Where(IsLicence).Order(StringComparer.Ordinal))
        {
            string own = File.ReadAllText(file).ReplaceLineEndings("\n").TrimEnd();
            // Packages of one project share their texts.
            if (told.TryAdd(own, name)) text.Append('\n').Append(own).Append('\n');
            else text.Append(Path.GetFileName(file)).Append(": the same text as under ").Append(told[own].Replace('/', ' ')).Append('\n');
        }
        return text.ToString();
    }

    private static bool IsLicence(string file)
    {
        string name = Path.GetFileName(file).ToUpperInvariant();
        return (name.StartsWith("LICENSE", StringComparison.Ordinal) || name.StartsWith("NOTICE", StringComparison.Ordinal) || name.StartsWith("THIRD-PARTY", StringComparison.Ordinal) || name.StartsWith("THIRDPARTY", StringComparison.Ordinal)) && !name.EndsWith(".RTF", StringComparison.Ordinal);
    }
}
