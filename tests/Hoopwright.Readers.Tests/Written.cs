using System.Collections.Immutable;
using System.Text;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Testing;

namespace Hoopwright.Readers.Tests;

/// <summary>Packets of the examples and of a plan with hostile names, written once to a folder that goes away with the tests.</summary>
internal static class Written
{
    // First, as the folders below are put into it.
    private static readonly List<string> Folders = [];
    private static readonly Lazy<string> Made = new(Make);
    private static readonly Dictionary<string, PlannedTunnel> Plans = [];

    /// <summary>The day on the sheets.</summary>
    public static readonly DateOnly Day = new(2026, 3, 1);

    /// <summary>The plan whose words try to break each form.</summary>
    public const string Hostile = "hostile";

    /// <summary>The folder; a packet in a folder of its own for each plan.</summary>
    public static string Folder => Made.Value;

    /// <summary>A folder for what is made of them.</summary>
    public static string Scratch { get; } = Temporary("hoopwright-scratch-");

    /// <summary>The names of the packets.</summary>
    public static ImmutableArray<string> Names { get; } = [.. SamplePlans.GoodExamples, SamplePlans.BuiltExample, Hostile];

    /// <summary>A plan worked out.</summary>
    public static PlannedTunnel Planned(string name)
    {
        _ = Folder;
        return Plans[name];
    }

    /// <summary>Takes all folders away.</summary>
    public static void TakeAway()
    {
        lock (Folders)
        {
            foreach (string folder in Folders) Directory.Delete(folder, recursive: true);
            Folders.Clear();
        }
    }

    private static string Temporary(string prefix)
    {
        string folder = Directory.CreateTempSubdirectory(prefix).FullName;
        lock (Folders) Folders.Add(folder);
        return folder;
    }

    private static string Make()
    {
        string folder = Temporary("hoopwright-readers-");
        foreach (string name in Names)
        {
            byte[] text = name == Hostile ? Encoding.UTF8.GetBytes(HostilePlan.Text) : SamplePlans.ExampleBytes(name);
            PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(text));
            Plans[name] = planned;
            Assert.True(planned.Tunnel is not null, $"{name}: {string.Join("\n", planned.Diagnostics)}");
            foreach (PacketFile file in PacketWriter.Write(planned, Paper.Letter, Day))
            {
                string path = Path.Combine(folder, name, file.Name);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllBytes(path, file.Bytes.AsSpan());
            }
        }
        return folder;
    }
}
