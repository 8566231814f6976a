using System.Globalization;
using Hoopwright.Release;

if (args is not [var folder, var seconds, .. var assets] || !long.TryParse(seconds, NumberStyles.None, CultureInfo.InvariantCulture, out long since))
{
    Console.Error.WriteLine("Usage: FOLDER SECONDS ASSETS... finishes a release: FOLDER holds a folder for each program, packages and a bill of materials;");
    Console.Error.WriteLine("SECONDS since 1970 is the time that everything is dated with; ASSETS are the project.assets.json files of what is released.");
    return 2;
}
DateTimeOffset date = DateTimeOffset.FromUnixTimeSeconds(since);
string notices = Notices.Of(assets);
foreach (string bill in Directory.GetFiles(folder, "*.cdx.json")) BillOfMaterials.Date(bill, date);
foreach (string program in Directory.GetDirectories(folder).Order(StringComparer.Ordinal))
{
    File.WriteAllText(Path.Combine(program, "THIRD-PARTY-NOTICES.txt"), notices);
    SteadyZip.OfFolder(program, program + ".zip", date);
    Directory.Delete(program, recursive: true);
}
foreach (string package in Directory.GetFiles(folder, "*.nupkg")) SteadyZip.OfPackage(package, date);
File.WriteAllText(Path.Combine(folder, "THIRD-PARTY-NOTICES.txt"), notices);
Checksums.Write(folder);
return 0;
