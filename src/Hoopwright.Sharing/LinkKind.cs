namespace Hoopwright.Sharing;

/// <summary>What a link to a shared plan allows. Each kind allows what stands before it, too.</summary>
public enum LinkKind
{
    /// <summary>Reads plan and site book.</summary>
    Read,

    /// <summary>Adds entries to the site book.</summary>
    Add,

    /// <summary>Changes the plan.</summary>
    Edit,

    /// <summary>Makes and revokes links, reads the audit, exports and deletes everything. There is one, given out when a plan is first shared.</summary>
    Keeper,
}
