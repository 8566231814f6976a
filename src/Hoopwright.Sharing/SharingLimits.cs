namespace Hoopwright.Sharing;

/// <summary>Sizes that the server does not go beyond. Lengths of text are counted in bytes of UTF-8.</summary>
public static class SharingLimits
{
    /// <summary>A plan without its site book: 2 MiB, some hundred times the bundled example.</summary>
    public const int DocumentBytes = 2 << 20;

    /// <summary>The body of a request: 5 MiB, so that a plan fits even with all its quotes and line ends escaped.</summary>
    public const int BodyBytes = 5 << 20;

    /// <summary>One entry with its picture: 96 KiB.</summary>
    public const int EntryBytes = 96 << 10;

    /// <summary>A picture within an entry, as a data address: 80,000 characters. The app makes pictures of at most 60,000.</summary>
    public const int PictureCharacters = 80_000;

    /// <summary>Entries of one push.</summary>
    public const int EntriesPerPush = 500;

    /// <summary>Entries of one plan.</summary>
    public const int EntriesPerPlan = 200_000;

    /// <summary>All entries of one plan together: 256 MiB.</summary>
    public const long EntryBytesPerPlan = 256L << 20;

    /// <summary>Entries of one answer.</summary>
    public const int EntriesPerAnswer = 5_000;

    /// <summary>Entries of one answer together: 2 MiB, but always at least one entry.</summary>
    public const int BytesPerAnswer = 2 << 20;

    /// <summary>Links of one plan, revoked ones among them.</summary>
    public const int LinksPerPlan = 200;

    /// <summary>A name or label as typed, in characters.</summary>
    public const int NameCharacters = 200;

    /// <summary>How deep groups and lists may stand in each other in what is sent.</summary>
    public const int Depth = 32;
}
