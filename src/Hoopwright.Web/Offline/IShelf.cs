namespace Hoopwright.Web.Offline;

/// <summary>Where plans are kept on this device.</summary>
public interface IShelf
{
    /// <summary>Another tab changed a plan; its identity.</summary>
    event Action<string>? ChangedElsewhere;

    /// <summary>Whether anything is kept.</summary>
    Task<ShelfState> StateAsync();

    /// <summary>The plans.</summary>
    Task<ShelfAnswer> ListAsync();

    /// <summary>One plan.</summary>
    Task<ShelfAnswer> LoadAsync(string id);

    /// <summary>One plan for the page that changes it: from here on answers to its changes leave out what it knows.</summary>
    Task<ShelfAnswer> OpenAsync(string id);

    /// <summary>Puts a new plan on the shelf.</summary>
    Task<ShelfAnswer> AddAsync(string id, string name, string document);

    /// <summary>Takes a plan off the shelf for good.</summary>
    Task<ShelfAnswer> RemoveAsync(string id);

    /// <summary>Changes one value of a plan as it is stored at that moment.</summary>
    /// <param name="id">The plan.</param>
    /// <param name="path">The value's path.</param>
    /// <param name="value">The value as JSON; null leaves the field out.</param>
    Task<ShelfAnswer> ChangeAsync(string id, string path, string? value);

    /// <summary>One step back or forward in the plan's history.</summary>
    Task<ShelfAnswer> TurnAsync(string id, bool back);
}
