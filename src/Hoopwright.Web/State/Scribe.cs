using System.Text.Json.Nodes;

namespace Hoopwright.Web.State;

/// <summary>Writes entries into the site book of the open plan, in the name of whoever said so on this device.</summary>
/// <param name="plan">The open plan.</param>
/// <param name="script">Keeps the names on this device.</param>
/// <param name="clock">The time.</param>
public sealed class Scribe(OpenPlan plan, PageScript script, TimeProvider clock)
{
    private const string WhoName = "who", DeviceName = "device";
    private bool recalled;

    /// <summary>Who writes, as typed; empty where nobody is named.</summary>
    public string By { get; private set; } = "";

    /// <summary>What this phone or computer is called, as typed; empty where it has no name.</summary>
    public string Device { get; private set; } = "";

    /// <summary>The names kept before.</summary>
    public async Task RecallAsync()
    {
        if (recalled) return;
        recalled = true;
        (By, Device) = (await script.RecallAsync(WhoName) ?? "", await script.RecallAsync(DeviceName) ?? "");
    }

    /// <summary>Names who writes.</summary>
    public Task NameAsync(string by)
    {
        By = by.Trim();
        return script.RememberAsync(WhoName, By);
    }

    /// <summary>Names this device.</summary>
    public Task NameDeviceAsync(string device)
    {
        Device = device.Trim();
        return script.RememberAsync(DeviceName, Device);
    }

    /// <summary>An identity for something written now.</summary>
    public string NewId() => SiteBookPage.NewId(clock.GetUtcNow());

    /// <summary>Writes an entry.</summary>
    /// <param name="kind">Its kind, as the plan has it.</param>
    /// <param name="of">What it is about.</param>
    /// <param name="value">Its value; null for none.</param>
    /// <param name="note">A note; null for none.</param>
    /// <param name="corrects">The entry that it corrects; null for none.</param>
    public Task WriteAsync(string kind, string of, string? value, string? note, string? corrects = null)
    {
        JsonObject entry = SiteBookPage.NewEntry(plan.Document, clock.GetUtcNow());
        entry["kind"] = kind;
        entry["of"] = of;
        if (value is not null) entry["value"] = value;
        if (By.Length > 0) entry["by"] = By;
        if (Device.Length > 0) entry["device"] = Device;
        if (corrects is not null) entry["corrects"] = corrects;
        if (note is not null) entry["note"] = note;
        return plan.SetAsync($"siteBook[{SiteBookPage.Count(plan.Root)}]", entry);
    }
}
