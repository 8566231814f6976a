using System.Text.Json;
using System.Text.Json.Serialization;
using Hoopwright.Sharing;

namespace Hoopwright.Web.State;

/// <summary>What this device remembers of a plan that a server keeps.</summary>
/// <param name="Token">The secret part of its link, or the keeper key.</param>
/// <param name="Kind">What that allows.</param>
/// <param name="Epoch">The server's word for the state that the cursor belongs to; empty before the first answer.</param>
/// <param name="Cursor">How far entries were read.</param>
/// <param name="Version">The version of the plan that was read last.</param>
/// <param name="Base">The plan without its site book as server and device last agreed.</param>
/// <param name="Known">The identities of the entries that the server has, or refused for good.</param>
public sealed record ShareRecord(string Token, LinkKind Kind, string Epoch, long Cursor, long Version, string Base, HashSet<string> Known)
{
    /// <summary>A link that nothing was read by yet.</summary>
    /// <param name="token">Its secret part.</param>
    /// <param name="kind">What it allows.</param>
    public static ShareRecord New(string token, LinkKind kind) => new(token, kind, "", 0, 0, "{}", []);

    /// <summary>The record as it is kept.</summary>
    public string Write() => JsonSerializer.Serialize(this, ShareRecordJson.Default.ShareRecord);

    /// <summary>A record that was kept; null when there is none that can be read.</summary>
    public static ShareRecord? Read(string? text)
    {
        try
        {
            return string.IsNullOrEmpty(text) ? null : JsonSerializer.Deserialize(text, ShareRecordJson.Default.ShareRecord);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}

/// <summary>How it is read and written without reflection.</summary>
[JsonSourceGenerationOptions(UseStringEnumConverter = true)]
[JsonSerializable(typeof(ShareRecord))]
internal sealed partial class ShareRecordJson : JsonSerializerContext;
