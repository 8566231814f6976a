using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Hoopwright.Sheets.Ics;

/// <summary>The events of a calendar file that was written before, so that the next one takes up where it left off.</summary>
public sealed class KeptEvents
{
    private static readonly DateTimeOffset RevisionsBegin = new(2020, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly ImmutableSortedDictionary<string, (int Sequence, ImmutableArray<string> Lines)> _events;

    private KeptEvents(ImmutableSortedDictionary<string, (int, ImmutableArray<string>)> events) => _events = events;

    /// <summary>No file was written before.</summary>
    public static KeptEvents None { get; } = new(ImmutableSortedDictionary<string, (int, ImmutableArray<string>)>.Empty.WithComparers(StringComparer.Ordinal));

    /// <summary>The names of the events.</summary>
    public ImmutableArray<string> Uids => [.. _events.Keys];

    /// <summary>Reads the events of a file; what cannot be read is left out.</summary>
    /// <param name="file">The bytes of the file.</param>
    public static KeptEvents Read(ReadOnlySpan<byte> file)
    {
        ImmutableSortedDictionary<string, (int, ImmutableArray<string>)>.Builder events = ImmutableSortedDictionary.CreateBuilder<string, (int, ImmutableArray<string>)>(StringComparer.Ordinal);
        List<string>? lines = null;
        foreach (string line in IcsText.Unfolded(Encoding.UTF8.GetString(file)))
        {
            if (line == "BEGIN:VEVENT") lines = [];
            else if (line == "END:VEVENT" && lines is not null)
            {
                string? uid = Value(lines, "UID:");
                int sequence = int.TryParse(Value(lines, "SEQUENCE:"), NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 0;
                if (uid is not null) events[uid] = (sequence, [.. lines.Where(IsContent)]);
                lines = null;
            }
            else lines?.Add(line);
        }
        return new KeptEvents(events.ToImmutable());
    }

    /// <summary>The revision of an event with some lines: as it was where they are the same, else a later one.</summary>
    internal int SequenceOf(string uid, IEnumerable<string> lines, DateTimeOffset stamp)
    {
        // Minutes, so that a file that is made later goes before one of which nothing is known here.
        int minutes = (int)Math.Clamp((stamp - RevisionsBegin).TotalMinutes, 0, int.MaxValue);
        return !_events.TryGetValue(uid, out (int Sequence, ImmutableArray<string> Lines) before) ? minutes
            : before.Lines.SequenceEqual(lines.Where(IsContent)) ? before.Sequence : Math.Max(before.Sequence + 1, minutes);
    }

    /// <summary>The lines of an event, without its name, stamp and revision.</summary>
    internal ImmutableArray<string> LinesOf(string uid) => _events[uid].Lines;

    private static bool IsContent(string line) => !line.StartsWith("UID:", StringComparison.Ordinal) && !line.StartsWith("DTSTAMP:", StringComparison.Ordinal) && !line.StartsWith("SEQUENCE:", StringComparison.Ordinal);

    private static string? Value(List<string> lines, string name) => lines.Find(line => line.StartsWith(name, StringComparison.Ordinal))?[name.Length..];
}
