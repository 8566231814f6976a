using System.Text.Json.Serialization;

namespace Hoopwright.Sharing;

/// <summary>What a link to a shared plan allows. Each kind allows what stands before it, too.</summary>
public enum LinkKind
{
    /// <summary>Reads plan and site book.</summary>
    [JsonStringEnumMemberName("read")]
    Read,

    /// <summary>Adds entries to the site book.</summary>
    [JsonStringEnumMemberName("add")]
    Add,

    /// <summary>Changes the plan.</summary>
    [JsonStringEnumMemberName("edit")]
    Edit,

    /// <summary>Makes and revokes links, reads the audit, exports and deletes everything. There is one, given out when a plan is first shared.</summary>
    [JsonStringEnumMemberName("keeper")]
    Keeper,
}
