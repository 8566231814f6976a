namespace Hoopwright.Web.State;

/// <summary>The weather file that was opened last. It stays in the memory of the page, and goes when the page is closed.</summary>
public sealed class WeatherDesk
{
    /// <summary>Another file was opened.</summary>
    public event Action? Changed;

    /// <summary>Its text; empty for none.</summary>
    public string Text { get; private set; } = "";

    /// <summary>What it is called; empty where it was dropped.</summary>
    public string Name { get; private set; } = "";

    /// <summary>True while a page is in sight that reads weather.</summary>
    public bool IsOpen { get; set; }

    /// <summary>Opens a file.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="name">Its name.</param>
    public void Open(string text, string name)
    {
        (Text, Name) = (text, name);
        Changed?.Invoke();
    }
}
