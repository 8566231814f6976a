using Microsoft.AspNetCore.Components.Forms;

namespace Hoopwright.Web.State;

/// <summary>The text of a file that somebody chose.</summary>
public static class ChosenText
{
    /// <summary>The largest file that is read: 64 MiB. A plan with a site book of a hundred thousand entries has a fifth of that.</summary>
    public const long MostBytes = 64 << 20;

    // In pieces as large as this one: each asks the browser anew.
    private const int PieceBytes = 1 << 20;

    /// <summary>Reads it; null when it is larger than <see cref="MostBytes"/>.</summary>
    /// <param name="file">The file.</param>
    public static async Task<string?> ReadAsync(IBrowserFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (file.Size > MostBytes) return null;
        using StreamReader reader = new(file.OpenReadStream(MostBytes), bufferSize: PieceBytes);
        return await reader.ReadToEndAsync();
    }
}
