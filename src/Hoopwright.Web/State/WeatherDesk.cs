namespace Hoopwright.Web.State;

/// <summary>The weather file that was opened last. It stays in the memory of the page, and goes when the page is closed.</summary>
public sealed class WeatherDesk
{
    private int readers;

    /// <summary>Another file was opened, or another clock chosen.</summary>
    public event Action? Changed;

    /// <summary>Its text; empty for none.</summary>
    public string Text { get; private set; } = "";

    /// <summary>What it is called; empty where it was dropped.</summary>
    public string Name { get; private set; } = "";

    /// <summary>The clock that hours are told by, as -04:00; empty for that of the file.</summary>
    public string Clock { get; private set; } = "";

    /// <summary>Another clock was chosen. It stays for the next file.</summary>
    /// <param name="clock">As -04:00; empty for that of the file.</param>
    public void TellBy(string clock)
    {
        Clock = clock;
        Changed?.Invoke();
    }

    /// <summary>True while a part of the page is in sight that reads weather.</summary>
    public bool IsOpen => readers > 0;

    /// <summary>A part that reads weather came into sight.</summary>
    public void Enter() => readers++;

    /// <summary>A part that reads weather went out of sight. The next one may have come before.</summary>
    public void Leave() => readers--;

    /// <summary>Opens a file.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="name">Its name.</param>
    public void Open(string text, string name)
    {
        (Text, Name) = (text, name);
        Changed?.Invoke();
    }
}
